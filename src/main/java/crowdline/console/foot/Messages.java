package crowdline.console.foot;

import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The messages of a session: which of them the foot line says now, and all of them to be read again. What stands is said
 * until it is no longer so. What was said once goes by itself if it asks for nothing, and else when it has been in front
 * for a moment and the user has done something since; several take turns in front.
 */
final class Messages {
    /** How long what asks for nothing is said, seconds. Tuned: time to look down from the sky and read it. */
    private static final double GOOD_NEWS_S = 10;

    /** In front for this long, a message can have been read, seconds. Tuned. */
    private static final double READ_S = 4;

    /** Of several that ask for something each is in front for this long, seconds, before the next. Tuned. */
    private static final double TURN_S = 8;

    /** More than a day brings; it bounds memory. */
    private static final int MOST_KEPT = 200;

    private static final Comparator<Mark> MOST_PRESSING = Comparator.comparing(
                    (Mark m) -> m.tone() == Tone.GOOD ? Tone.CALM : m.tone())
            .reversed();

    private final Deque<Said> all = new ArrayDeque<>();
    private final List<Waiting> said = new ArrayList<>();
    private List<Mark> standing = List.of();

    /**
     * A message.
     *
     * @param atS when it came, seconds on the host's clock
     */
    record Said(double atS, Mark mark) {}

    /** Said once, and how long it has been in front. */
    private static final class Waiting {
        private final Mark mark;
        private double inFrontS;

        Waiting(Mark mark) {
            this.mark = mark;
        }

        boolean isGoodNews() {
            return mark.tone() == Tone.GOOD || mark.tone() == Tone.CALM;
        }

        double turns() {
            return isGoodNews() ? 0 : Math.floor(inFrontS / TURN_S);
        }
    }

    /** Says this once. */
    void say(double atS, Mark mark) {
        Waiting next = new Waiting(mark);
        said.removeIf(w -> w.mark.equals(mark) || (w.isGoodNews() && next.isGoodNews()));
        said.add(next);
        keep(atS, mark);
    }

    /** Says these from now on, until told others. */
    void stand(double atS, List<Mark> marks) {
        marks.stream().filter(m -> !standing.contains(m)).forEach(m -> keep(atS, m));
        standing = List.copyOf(marks);
    }

    private void keep(double atS, Mark mark) {
        if (!all.isEmpty() && all.getLast().mark().equals(mark)) {
            all.removeLast();
        }
        all.addLast(new Said(atS, mark));
        if (all.size() > MOST_KEPT) {
            all.removeFirst();
        }
    }

    /** So much time has passed; {@code front} is what was in front of everything meanwhile. */
    void pass(double seconds, Mark front) {
        for (Waiting waiting : said) {
            if (waiting.isGoodNews() || waiting.mark.equals(front)) {
                waiting.inFrontS += seconds;
            }
        }
        said.removeIf(w -> w.isGoodNews() && w.inFrontS >= GOOD_NEWS_S);
    }

    /** The user has done something: what can have been read is not said any longer. */
    void acted() {
        said.removeIf(w -> !w.isGoodNews() && w.inFrontS >= READ_S);
    }

    /** Good news is no longer true. */
    void forgetGoodNews() {
        said.removeIf(w -> w.mark.tone() == Tone.GOOD);
    }

    /** These words are no longer true. */
    void unsay(String words) {
        said.removeIf(w -> w.mark.word().equals(words));
    }

    /** True if something is said that time or the user ends. */
    boolean isWaiting() {
        return !said.isEmpty();
    }

    /** What is said now together with these warnings, the most pressing first. */
    List<Mark> now(List<Mark> warnings) {
        List<Mark> marks = new ArrayList<>();
        List<Waiting> newestFirst = new ArrayList<>(said);
        Collections.reverse(newestFirst);
        newestFirst.sort(Comparator.comparingDouble(Waiting::turns));
        newestFirst.forEach(w -> marks.add(w.mark));
        warnings.stream().filter(m -> !marks.contains(m)).forEach(marks::add);
        standing.stream().filter(m -> !marks.contains(m)).forEach(marks::add);
        marks.sort(MOST_PRESSING);
        return marks;
    }

    /** All of the session, the newest first. */
    List<Said> all() {
        List<Said> newestFirst = new ArrayList<>(all);
        Collections.reverse(newestFirst);
        return newestFirst;
    }
}
