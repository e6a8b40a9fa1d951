package crowdline.live.debrief;

import crowdline.live.debrief.Debrief.Fate;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.Debrief.Told;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import crowdline.patter.Unplaced;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.timing.Pass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** Says what to change before the next time, each in one sentence with its numbers. */
final class DebriefChanges {
    /** Nobody counts further in seconds. */
    private static final long MINUTES_FROM_S = 120;

    /** A figure is worth a sentence from this difference on, in seconds and as a share; design choices. */
    private static final double DIFFERENT_S = 2;

    private static final double DIFFERENT_SHARE = 0.15;
    /** So many remarks are named in one sentence. */
    private static final int NAMED = 3;

    private final Show show;
    private final DebriefSources sources;

    DebriefChanges(Show show, DebriefSources sources) {
        this.show = show;
        this.sources = sources;
    }

    List<String> of(List<Run> runs, LiveState state) {
        List<String> changes = new ArrayList<>();
        Map<String, List<Run>> byVariant = new LinkedHashMap<>();
        runs.forEach(r -> byVariant
                .computeIfAbsent(r.actId() + "\n" + r.variant(), k -> new ArrayList<>())
                .add(r));
        for (List<Run> same : byVariant.values()) {
            duties(changes, same);
            length(changes, same);
            figures(changes, same);
            unplaced(changes, same.get(0));
            cutShort(changes, same);
        }
        if (!runs.isEmpty()) {
            DutyRun.all(show, state).forEach(duty -> ofTheDay(changes, duty));
        }
        return changes;
    }

    private static void ofTheDay(List<String> changes, DutyRun duty) {
        int times = duty.asked().times();
        if (duty.saidCount() < times) {
            changes.add("A duty of the show was "
                    + (duty.saidCount() == 0
                            ? "not marked: "
                            : "marked " + duty.saidCount() + " of " + times + " times: ")
                    + quoted(duty.text()));
        }
    }

    private static void duties(List<String> changes, List<Run> same) {
        for (Run run : same) {
            List<String> missed = run.remarks().stream()
                    .filter(r -> r.kind() == RemarkKind.DUTY && r.told() != Told.SAID)
                    .map(r -> quoted(r.text()))
                    .toList();
            if (!missed.isEmpty() && run.sessionEndS() != null) {
                changes.add(run.title() + (run.run() > 1 ? ", run " + run.run() : "") + ": " + missed.size()
                        + (missed.size() == 1 ? " duty was" : " duties were") + " not marked: "
                        + listed(missed));
            }
        }
    }

    /** The first few of them, and how many more there are. */
    private static String listed(List<String> texts) {
        String more = texts.size() > NAMED ? " and " + (texts.size() - NAMED) + " more" : "";
        return String.join(", ", texts.subList(0, Math.min(NAMED, texts.size()))) + more;
    }

    private void length(List<String> changes, List<Run> same) {
        for (Run run : same) {
            Double flownS = run.flownS();
            Act act = show.act(run.actId()).orElse(null);
            if (flownS != null && act != null && flownS > act.slotMinutes() * 60 + DIFFERENT_S) {
                changes.add(run.title() + " took " + seconds(flownS - act.slotMinutes() * 60)
                        + " longer than its slot of " + seconds(act.slotMinutes() * 60));
            }
        }
    }

    private void figures(List<String> changes, List<Run> same) {
        Run first = same.get(0);
        for (String id : ids(same)) {
            List<FigureRun> own = same.stream()
                    .flatMap(r -> r.figures().stream())
                    .filter(f -> f.figureId().equals(id))
                    .toList();
            String name = own.get(0).name();
            List<Double> longer = new ArrayList<>(own.stream()
                    .filter(FigureRun::measured)
                    .map(FigureRun::longerS)
                    .filter(Objects::nonNull)
                    .toList());
            Double plannedS = own.get(0).plannedS();
            if (plannedS != null) {
                earlier(first, id).forEach(flownS -> longer.add(flownS - plannedS));
                double leastS = Math.max(DIFFERENT_S, DIFFERENT_SHARE * plannedS);
                String difference = difference(longer, leastS);
                if (!difference.isEmpty()) {
                    changes.add(first.title() + ": " + name + " took " + difference + " than predicted in "
                            + runs(longer.size()));
                }
            }
            boolean everyTime = own.stream().allMatch(f -> f.fate() == Fate.DROPPED);
            if (everyTime) {
                changes.add(first.title() + ": " + name + " was dropped in " + runs(own.size())
                        + "; a variant without it would keep the plan right");
            }
        }
    }

    /** "4 s longer", if every run differs the same way by at least so much; otherwise nothing. */
    private static String difference(List<Double> longer, double leastS) {
        if (longer.isEmpty()) {
            return "";
        }
        double meanS =
                longer.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        if (longer.stream().allMatch(d -> d >= leastS)) {
            return seconds(meanS) + " longer";
        }
        return longer.stream().allMatch(d -> d <= -leastS) ? seconds(-meanS) + " less" : "";
    }

    /** Lengths of a figure in earlier passes that were flown and count. */
    private List<Double> earlier(Run run, String figureId) {
        return sources.passes(run.actId(), run.variant()).stream()
                .filter(p -> p.counts() && (p.how() == Pass.How.BY_HAND || p.how() == Pass.How.BY_LOG))
                .flatMap(p -> p.figures().stream())
                .filter(f -> f.figureId().equals(figureId))
                .map(Pass.TimedFigure::durationS)
                .toList();
    }

    private static List<String> ids(List<Run> same) {
        return same.stream()
                .flatMap(r -> r.figures().stream())
                .map(FigureRun::figureId)
                .distinct()
                .toList();
    }

    private void unplaced(List<String> changes, Run run) {
        List<Unplaced> none = sources.plan(run.actId(), run.variant()).map(Plan::unplaced).orElse(List.of()).stream()
                .filter(u -> u.why() != Unplaced.Why.NO_GAP)
                .toList();
        if (!none.isEmpty()) {
            List<String> texts = none.stream()
                    .map(u -> quoted(text(run.actId(), u.remarkId())) + " (" + u.reason() + ")")
                    .toList();
            changes.add(run.title() + ": " + none.size() + (none.size() == 1 ? " remark" : " remarks")
                    + " never fitted into the plan; shorten or leave out " + listed(texts));
        }
    }

    private static void cutShort(List<String> changes, List<Run> same) {
        for (Run run : same) {
            long cut = run.remarks().stream()
                    .filter(r -> r.told() == Told.CUT_SHORT)
                    .count();
            if (cut > 0) {
                changes.add(run.title() + ": " + cut + (cut == 1 ? " remark was" : " remarks were")
                        + " started but not finished");
            }
        }
    }

    private String text(String actId, String remarkId) {
        Stream<Remark> own = show.act(actId).stream()
                .flatMap(a -> Stream.concat(
                        a.figures().stream().map(Figure::remarks).flatMap(List::stream), a.remarks().stream()));
        return Stream.concat(own, show.remarks().stream())
                .filter(r -> r.id().equals(remarkId))
                .findFirst()
                .map(Remark::text)
                .orElse(remarkId);
    }

    private static String runs(int count) {
        return count == 1 ? "its only run" : count == 2 ? "both runs" : "all " + count + " runs";
    }

    private static String quoted(String text) {
        return "\"" + (text.length() > 60 ? text.substring(0, 57).strip() + "..." : text) + "\"";
    }

    /** "45 s", from two minutes on "12 min" or "2:05 min". */
    private static String seconds(double seconds) {
        long whole = Math.round(seconds);
        if (whole < MINUTES_FROM_S) {
            return whole + " s";
        }
        return whole % 60 == 0 ? whole / 60 + " min" : String.format(Locale.UK, "%d:%02d min", whole / 60, whole % 60);
    }
}
