package crowdline.console.glossary;

import crowdline.console.paint.Digits;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.glossary.drill.Memory.Answer;
import crowdline.glossary.drill.Question;
import crowdline.glossary.drill.Session;
import crowdline.sight.picture.Flown;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the drill shows while it asks, and what its keys mean. */
final class Drill {
    /** As many as any question has. */
    static final int CHOICES = 4;

    private final Session session;
    private final String of;
    private @Nullable Integer chosen;
    private @Nullable Answer answer;
    /** Whether what the glossary says is shown, to judge oneself by. */
    private boolean told;

    /**
     * What to show.
     *
     * @param asks the question
     * @param flown what is watched, or {@link Flown#NONE}
     * @param choices to choose from; none while one is still to explain aloud
     * @param rightIndex which of them is right, or −1 if none is or it is not answered
     * @param text what the glossary says, or empty
     * @param verdict how it was answered, or null until then
     * @param score how many were right, and what is due
     * @param keys what the keys do
     * @param writes whether the answer is to be written now
     */
    record View(
            String asks,
            Flown flown,
            List<String> choices,
            int rightIndex,
            String text,
            @Nullable Mark verdict,
            String score,
            String keys,
            boolean writes) {
        View {
            choices = List.copyOf(choices);
        }
    }

    /** @param of what it is about if not about everything, in words; else empty */
    Drill(Session session, String of) {
        this.session = session;
        this.of = of;
    }

    View view() {
        Question question = session.now();
        if (question == null) {
            return new View(
                    "Nothing to ask about",
                    Flown.NONE,
                    List.of(),
                    -1,
                    "The figures are still being flown, or the act has none that the glossary knows.",
                    null,
                    of,
                    "Ctrl+D ends",
                    false);
        }
        Answer given = answer;
        boolean aloud = question.judgedByOneself() && !told;
        boolean writes = question.isWritten() && given == null;
        return new View(
                question.asks(),
                question.flown(),
                aloud || question.isWritten() ? List.of() : question.choices(),
                given == null ? -1 : question.right(),
                told || given != null ? question.text() : "",
                given == null ? null : verdict(question, given),
                (of.isEmpty() ? "" : of + ". ")
                        + (session.asked() == 0 ? "" : session.good() + " of " + session.asked() + " right. ")
                        + "Due today: " + session.due() + " of " + session.size(),
                aloud
                        ? "Space shows what the glossary says, Ctrl+D ends"
                        : writes
                                ? "Enter answers, with nothing written if you do not know it; F8 flies it, Ctrl+D ends"
                                : given == null
                                        ? Digits.upTo(question.choices().size(), "answer") + ", "
                                                + (question.flown().isEmpty() ? "" : "F8 flies it, ") + "Ctrl+D ends"
                                        : "Space goes on, Ctrl+D ends",
                writes);
    }

    private static Mark verdict(Question question, Answer given) {
        if (question.judgedByOneself()) {
            return given.isGood()
                    ? new Mark(Form.DISC, Tone.GOOD, "Good")
                    : new Mark(Form.CROSS, Tone.CAUTION, "It will come up again");
        }
        String right = question.choices().get(question.right());
        return given.isGood()
                ? new Mark(Form.DISC, Tone.GOOD, "Right: " + right)
                : new Mark(Form.CROSS, Tone.CAUTION, "The answer: " + right + ". It will come up again.");
    }

    /** Chooses an answer, from 0; once answered, any choice goes on to the next question. */
    void choose(int index) {
        if (chosen != null) {
            next();
        } else if (index >= 0 && index < view().choices().size()) {
            chosen = index;
            answer = session.answer(index);
        }
    }

    /** Answers with a name that was written. */
    void write(String words) {
        if (chosen == null && view().writes()) {
            answer = session.write(words);
            chosen = 0;
        }
    }

    /** Shows what the glossary says if one was to explain it; else the next question. What was not answered counts for nothing. */
    void next() {
        Question question = session.now();
        if (question != null && question.judgedByOneself() && !told) {
            told = true;
            return;
        }
        chosen = null;
        answer = null;
        told = false;
        session.next();
    }
}
