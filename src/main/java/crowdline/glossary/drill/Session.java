package crowdline.glossary.drill;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * One sitting: first what is due that day, the longest due first, then what was never asked, then the rest. What was not good
 * comes again a few questions later until it is, as {@link Memory}'s source has it. The same seed asks the same.
 */
public final class Session {
    /** Questions after which something comes again; a design choice. */
    private static final int AGAIN_AFTER = 3;

    private final Questions questions;
    private final List<String> figures;
    private final Map<String, Memory> memories;
    private final long today;
    private final Random random;
    private final BiConsumer<String, Memory> kept;
    private final Deque<String> waiting = new ArrayDeque<>();
    private final List<Again> again = new ArrayList<>();
    /** What counted today; asked again it changes nothing, for it was only just told. */
    private final Set<String> counted = new HashSet<>();

    private @Nullable Question now;
    private Question.@Nullable Kind before;
    private int asked;
    private int good;

    private record Again(String figure, int dueAt) {}

    /**
     * @param only the figures to ask about, or empty for all of them
     * @param known what is remembered of figures, by name
     * @param today in days since 1970-01-01
     * @param kept told what is remembered from now on
     */
    public Session(
            Questions questions,
            Set<String> only,
            Map<String, Memory> known,
            long today,
            long seed,
            BiConsumer<String, Memory> kept) {
        this.questions = questions;
        figures = questions.figures().stream()
                .filter(name -> only.isEmpty() || only.contains(name))
                .toList();
        memories = new HashMap<>(known);
        this.today = today;
        random = new Random(seed * 0x9E3779B97F4A7C15L);
        this.kept = kept;
        next();
    }

    /** What is asked; null if there is nothing to ask about. */
    public @Nullable Question now() {
        return now;
    }

    /** How many questions were answered. */
    public int asked() {
        return asked;
    }

    /** How many of them well. */
    public int good() {
        return good;
    }

    /** How many figures of this sitting are to be asked today, those that never were among them. */
    public int due() {
        return (int) figures.stream().filter(name -> memory(name).isDue(today)).count();
    }

    /** How many figures this sitting has. */
    public int size() {
        return figures.size();
    }

    /** Takes the answer to what is asked, from 0, and says how good it was. */
    public Memory.Answer answer(int choice) {
        Question question = now;
        if (question == null) {
            throw new IllegalStateException("nothing is asked");
        }
        Memory.Answer answer = question.answer(choice);
        String figure = question.figure();
        asked++;
        if (answer.isGood()) {
            good++;
        } else {
            again.add(new Again(figure, asked + AGAIN_AFTER));
        }
        // Ahead of its day a good answer tells little; a bad one does.
        if ((memory(figure).isDue(today) || !answer.isGood()) && counted.add(figure)) {
            Memory after = memory(figure).after(answer, today);
            memories.put(figure, after);
            kept.accept(figure, after);
        }
        return answer;
    }

    /** Takes a written answer to what is asked, forgiven its spelling, and says how good it was. */
    public Memory.Answer write(String words) {
        Question question = now;
        return answer(question != null && questions.isNamed(question.figure(), words) ? question.right() : -1);
    }

    /** Goes on to the next question. */
    public final void next() {
        String figure = take();
        if (figure == null) {
            now = null;
            return;
        }
        List<Question.Kind> kinds = new ArrayList<>(questions.kinds(figure));
        if (kinds.size() > 1) {
            kinds.remove(before);
        }
        Question.Kind kind = kinds.get(random.nextInt(kinds.size()));
        before = kind;
        now = questions.ask(figure, kind, random);
    }

    private Memory memory(String figure) {
        return memories.getOrDefault(figure, Memory.NEW);
    }

    private @Nullable String take() {
        for (Again one : again) {
            if (one.dueAt() <= asked) {
                again.remove(one);
                return one.figure();
            }
        }
        if (waiting.isEmpty()) {
            waiting.addAll(inOrder());
        }
        return waiting.poll();
    }

    private List<String> inOrder() {
        List<String> order = new ArrayList<>(figures);
        Collections.shuffle(order, random);
        // Stable, so that what is equal keeps its chance.
        order.sort(Comparator.comparingInt(
                        (String name) -> !memory(name).isDue(today) ? 2 : memories.containsKey(name) ? 0 : 1)
                .thenComparingLong(name -> memory(name).lastDay() + memory(name).intervalDays()));
        return order;
    }
}
