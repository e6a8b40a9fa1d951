package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Slots do not overlap and stand in the order of the clock. */
final class SlotRule implements ShowRule {
    private static final double S_PER_MINUTE = 60;

    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        List<Act> acts = show.acts();
        List<Integer> byClock = IntStream.range(0, acts.size())
                .boxed()
                .sorted(Comparator.comparing(i -> acts.get(i).slotStart()))
                .toList();
        int longest = -1;
        for (int a : byClock) {
            Act act = acts.get(a);
            if (longest >= 0 && startS(act) < endS(acts.get(longest))) {
                Act other = acts.get(longest);
                findings.accept(new Finding(
                        Severity.WARNING,
                        "slots-overlap",
                        Written.quoted(act.title()) + " begins at " + act.slotStart() + ", before "
                                + Written.quoted(other.title()) + " of " + other.slotStart() + " ends at "
                                + other.slotStart().plusSeconds(Math.round(60 * other.slotMinutes()))
                                + "; move one of them",
                        At.act(a) + ".slotStart"));
            }
            if (longest < 0 || endS(act) > endS(acts.get(longest))) {
                longest = a;
            }
        }
        for (int a = 1; a < acts.size(); a++) {
            if (acts.get(a).slotStart().isBefore(acts.get(a - 1).slotStart())) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "acts-out-of-order",
                        "the act " + Written.quoted(acts.get(a).title())
                                + " begins before the one listed ahead of it; list acts in running order",
                        At.act(a) + ".slotStart"));
            }
        }
    }

    private static double startS(Act act) {
        return act.slotStart().toSecondOfDay();
    }

    private static double endS(Act act) {
        return startS(act) + act.slotMinutes() * S_PER_MINUTE;
    }
}
