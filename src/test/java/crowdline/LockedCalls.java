package crowdline;

import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassReader;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.MethodVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Opcodes;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** What is called in synchronized methods and blocks, and by the methods that these call, as far as their code is known. */
final class LockedCalls {
    private final Map<String, List<Call>> calls = new HashMap<>();

    /** A call of a method, named as {@code owner.method(descriptor)} with slashes. */
    private record Call(String target, String owner, boolean locked) {}

    void read(byte[] classFile) {
        new ClassReader(classFile).accept(new Classes(), ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
    }

    /**
     * The ways to a call that must not be made under a lock, from the method that holds it.
     *
     * @param out whether the type that is called belongs to somebody else, by its name with slashes
     */
    Set<String> waysOut(Predicate<String> out) {
        Set<String> ways = new TreeSet<>();
        calls.forEach((method, made) ->
                made.stream().filter(Call::locked).forEach(call -> follow(call, method, out, new HashSet<>(), ways)));
        return ways;
    }

    private void follow(Call call, String way, Predicate<String> out, Set<String> seen, Set<String> ways) {
        String next = way + " → " + call.target();
        if (out.test(call.owner())) {
            ways.add(next);
        } else if (seen.add(call.target())) {
            calls.getOrDefault(call.target(), List.of()).forEach(below -> follow(below, next, out, seen, ways));
        }
    }

    private final class Classes extends ClassVisitor {
        private String name = "";

        Classes() {
            super(Opcodes.ASM9);
        }

        @Override
        public void visit(
                int version,
                int access,
                String visited,
                @Nullable String signature,
                @Nullable String parent,
                String @Nullable [] interfaces) {
            name = visited;
        }

        @Override
        public MethodVisitor visitMethod(
                int access,
                String method,
                String descriptor,
                @Nullable String signature,
                String @Nullable [] exceptions) {
            List<Call> made = new ArrayList<>();
            calls.put(name + "." + method + descriptor, made);
            return new Calls(made, (access & Opcodes.ACC_SYNCHRONIZED) != 0);
        }
    }

    /**
     * A block is compiled to where its lock is taken, its code, and at its end a handler that gives the lock back and throws
     * on, which stands behind everything in the block.
     */
    private static final class Calls extends MethodVisitor {
        private final List<Call> made;
        private final boolean whole;
        private final Deque<Integer> blocks = new ArrayDeque<>();
        private boolean givenBack;

        Calls(List<Call> made, boolean whole) {
            super(Opcodes.ASM9);
            this.made = made;
            this.whole = whole;
        }

        @Override
        public void visitInsn(int opcode) {
            if (opcode == Opcodes.MONITORENTER) {
                blocks.push(opcode);
            } else if (opcode == Opcodes.ATHROW && givenBack) {
                blocks.poll();
            }
            givenBack = opcode == Opcodes.MONITOREXIT;
        }

        @Override
        public void visitVarInsn(int opcode, int variable) {
            // Between giving the lock back and throwing on stands what loads the exception.
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
            givenBack = false;
            made.add(new Call(owner + "." + name + descriptor, owner, whole || !blocks.isEmpty()));
        }
    }
}
