package crowdline.glossary.drill;

import crowdline.sight.picture.Flown;
import java.util.List;

/**
 * One question.
 *
 * @param kind what is asked for
 * @param figure the name of the figure it is about
 * @param asks the question, such as "Which figure is this?"
 * @param flown what is watched; {@link Flown#NONE} if nothing is
 * @param choices answers to choose from; where it is written, the right one alone
 * @param right which of them is right, from 0; −1 where one judges oneself
 * @param text what the glossary says, to be shown afterwards
 */
public record Question(
        Kind kind, String figure, String asks, Flown flown, List<String> choices, int right, String text) {
    /** What is asked for. */
    public enum Kind {
        /** The name of what flies. */
        NAME,
        /** The name of what flies, written out of one's own head. */
        WRITE,
        /** Which of two that are mixed up flies. */
        APART,
        /** To explain a figure aloud, and to judge oneself by the glossary's words. */
        EXPLAIN,
        /** Which of three loads is felt at one place of a figure. */
        LOADS
    }

    public Question {
        choices = List.copyOf(choices);
        if (right >= choices.size()) {
            throw new IllegalArgumentException("no choice " + right + " of " + choices.size());
        }
    }

    /** Whether nobody but oneself can say how good the answer was. */
    public boolean judgedByOneself() {
        return right < 0;
    }

    /** Whether the answer is written. */
    public boolean isWritten() {
        return kind == Kind.WRITE;
    }

    /** How good a choice is as an answer. */
    public Memory.Answer answer(int choice) {
        if (isWritten()) {
            return choice == right ? Memory.Answer.PERFECT : Memory.Answer.WRONG;
        }
        if (!judgedByOneself()) {
            return choice == right ? Memory.Answer.RIGHT : Memory.Answer.WRONG;
        }
        return switch (choice) {
            case 0 -> Memory.Answer.PERFECT;
            case 1 -> Memory.Answer.PARTLY;
            default -> Memory.Answer.WRONG;
        };
    }
}
