package crowdline.patter;

import crowdline.flight.moment.Moment;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The time a plan has, in ticks.
 *
 * @param freeFrom when the next remark may begin
 * @param end when the last must be over
 * @param quiets stretches in which nothing is said, in the order of their starts, none overlapping
 * @param closed the same and those around what is worth watching, in which only calls, explanations and what is tied to a
 *     moment may be said
 */
record Horizon(int freeFrom, int end, List<Starts.Stretch> quiets, List<Starts.Stretch> closed) {

    static Horizon of(PlanRequest request, @Nullable Placed speaking) {
        PatterRules rules = request.rules();
        int now = Tick.up(request.nowS());
        int freeFrom = speaking == null ? now : Math.max(now, Tick.up(speaking.endS() + rules.breathS()));
        int end = now + Tick.at(rules.openEndS());
        if (!request.slots().isEmpty()) {
            double lastEndS =
                    request.slots().stream().mapToDouble(Slot::endS).max().orElseThrow();
            end = Math.max(now, Tick.at(lastEndS + rules.runPastS()));
        }
        List<Starts.Stretch> quiets = merged(quiets(request.slots()));
        List<Starts.Stretch> watched = watched(request.slots());
        watched.addAll(quiets);
        return new Horizon(freeFrom, end, quiets, watched.size() == quiets.size() ? quiets : merged(watched));
    }

    /** The stretches in which a remark may not be said. */
    List<Starts.Stretch> closedTo(Remark remark) {
        return isKeptFromWatching(remark) ? closed : quiets;
    }

    /** What keeps silent while there is something worth watching. A filler never has a moment of its own. */
    static boolean isKeptFromWatching(Remark remark) {
        return switch (remark.kind()) {
            case CALL, EXPLANATION -> false;
            case DUTY, FACT -> !remark.isTied();
            case FILLER -> true;
        };
    }

    private static List<Starts.Stretch> watched(List<Slot> slots) {
        List<Starts.Stretch> all = new ArrayList<>();
        for (Slot slot : slots) {
            for (Moment moment : slot.moments().moments()) {
                if (moment.worthWatching()) {
                    double atS = slot.startS() + moment.afterS();
                    all.add(new Starts.Stretch(
                            Tick.at(atS - PatterRules.WATCH_BEFORE_S), Tick.at(atS + PatterRules.WATCH_AFTER_S)));
                }
            }
        }
        return all;
    }

    private static List<Starts.Stretch> quiets(List<Slot> slots) {
        List<Starts.Stretch> all = new ArrayList<>();
        for (Slot slot : slots) {
            for (Quiet quiet : slot.quiets()) {
                Double toS = quiet.toS();
                double endS = toS == null ? slot.endS() : Math.min(slot.endS(), slot.startS() + toS);
                int from = Tick.at(slot.startS() + quiet.fromS());
                if (from < Tick.at(endS)) {
                    all.add(new Starts.Stretch(from, Tick.at(endS)));
                }
            }
        }
        return all;
    }

    private static List<Starts.Stretch> merged(List<Starts.Stretch> all) {
        all.sort(Comparator.comparingInt(Starts.Stretch::from));
        List<Starts.Stretch> merged = new ArrayList<>();
        for (Starts.Stretch quiet : all) {
            int last = merged.size() - 1;
            if (last >= 0 && quiet.from() <= merged.get(last).to()) {
                Starts.Stretch before = merged.get(last);
                merged.set(last, new Starts.Stretch(before.from(), Math.max(before.to(), quiet.to())));
            } else {
                merged.add(quiet);
            }
        }
        return List.copyOf(merged);
    }
}
