package crowdline.draft;

import crowdline.show.figure.RemarkKind;
import org.jspecify.annotations.Nullable;

/**
 * Something that could be said in a figure.
 *
 * @param scene which figure of the act, from 0
 * @param sort what is told by it: once in an act
 * @param value how much it is wanted against others, above 0; judgement, no source
 * @param when when it may begin to be seen as true; null for any time
 */
record Line(
        int scene,
        Role role,
        String sort,
        String text,
        double value,
        @Nullable TrueWhile when) {
    Line(int scene, Role role, String sort, String text, double value) {
        this(scene, role, sort, text, value, null);
    }

    /** What it does in its figure, and with that where in it it belongs. */
    enum Role {
        /** Its name, where no call had time before it: told as it begins. */
        NAME(RemarkKind.EXPLANATION),
        /** What to look for: told before it comes. */
        LOOK(RemarkKind.EXPLANATION),
        /** What it is: told before there is something to watch, of a spin while it spins. */
        WHAT(RemarkKind.EXPLANATION),
        /** What is behind it: told when there is time. */
        BEHIND(RemarkKind.EXPLANATION),
        /** What hands and feet do: told whole, as its first step alone says nothing. */
        HANDS(RemarkKind.EXPLANATION),
        /** A number of the figure, in words that can be pictured. */
        NUMBER(RemarkKind.FACT),
        /** Somebody or something beside the figure. */
        BESIDE(RemarkKind.FACT),
        /** The last words of the act. */
        CLOSING(RemarkKind.EXPLANATION);

        private final RemarkKind kind;

        Role(RemarkKind kind) {
            this.kind = kind;
        }

        RemarkKind kind() {
            return kind;
        }
    }
}
