package crowdline.practice;

import crowdline.live.state.RemarkEntry;
import crowdline.loaded.ShowLookup;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Count;
import crowdline.practice.PracticeScore.Line;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What was said when: calls against what they announce, remarks over the beginning of a figure, duties. */
final class TalkScore {
    /** A call should have been said so soon before its figure, and may end so long after its beginning, seconds; tuned. */
    private static final double CALLED_BEFORE_S = 20;

    private static final double CALLED_AFTER_S = 3;
    /** So much of a remark on either side of a beginning is talking over it, seconds; tuned. */
    private static final double OVER_S = 1;

    private final PracticeFlight flight;
    private final PracticeRun run;
    private final ShowLookup words;
    private final List<Piece> figures;

    TalkScore(PracticeFlight flight, PracticeRun run, ShowLookup words) {
        this.flight = flight;
        this.run = run;
        this.words = words;
        figures = flight.pieces().stream()
                .filter(p -> p.kind() == Piece.Kind.FIGURE && run.hadTimeAfter(p.fromS()))
                .toList();
    }

    /** @param counts takes how many calls came in time, beginnings were heard and duties done */
    List<Line> lines(List<Count> counts) {
        Act act = words.act(flight.actId()).orElse(null);
        if (act == null) {
            return List.of();
        }
        List<Line> lines = new ArrayList<>(calls(act, counts));
        lines.addAll(talkedOver(counts));
        lines.addAll(duties(act, counts));
        return List.copyOf(lines);
    }

    private List<Line> calls(Act act, List<Count> counts) {
        List<Line> lines = new ArrayList<>();
        int due = 0;
        int onTime = 0;
        for (Piece piece : figures) {
            Remark call = of(act, piece.figureId(), RemarkKind.CALL).stream()
                    .findFirst()
                    .orElse(null);
            if (call == null) {
                continue;
            }
            due++;
            Optional<RemarkEntry> said = said(call);
            double laterS = said.map(s -> s.endedAtS() - piece.fromS()).orElse(0.0);
            if (said.isEmpty()) {
                lines.add(new Line(
                        About.CALLS,
                        false,
                        PracticeWords.front(piece.name()) + " began, and no key marked its call as said."));
            } else if (laterS > CALLED_AFTER_S || laterS < -CALLED_BEFORE_S) {
                lines.add(new Line(
                        About.CALLS,
                        false,
                        PracticeWords.front(piece.name()) + " was called " + PracticeWords.against(laterS)
                                + " it began."));
            } else {
                onTime++;
            }
        }
        if (due > 0) {
            counts.add(new Count(About.CALLS, onTime, due));
            lines.add(
                    0,
                    new Line(
                            About.CALLS,
                            onTime == due,
                            onTime == due
                                    ? "Every call came on time."
                                    : onTime + " of " + due + " calls came on time."));
        }
        return lines;
    }

    private List<Line> talkedOver(List<Count> counts) {
        List<Line> lines = new ArrayList<>();
        Set<Piece> over = new HashSet<>();
        for (RemarkEntry entry : run.said()) {
            Remark remark = words.remark(entry.remarkId()).orElse(null);
            if (remark == null || remark.kind() == RemarkKind.CALL) {
                continue;
            }
            double fromS = fromS(entry, remark);
            figures.stream()
                    .filter(p -> p.fromS() > fromS + OVER_S && p.fromS() < entry.endedAtS() - OVER_S)
                    .forEach(p -> {
                        over.add(p);
                        lines.add(new Line(
                                About.TALK,
                                false,
                                "You were still saying " + PracticeWords.glance(remark.text()) + " when "
                                        + PracticeWords.the(p.name()) + " began."));
                    });
        }
        if (!figures.isEmpty() && !run.said().isEmpty()) {
            counts.add(new Count(About.TALK, figures.size() - over.size(), figures.size()));
        }
        if (lines.isEmpty() && !run.said().isEmpty()) {
            lines.add(new Line(About.TALK, true, "You did not talk over the start of any figure."));
        }
        return lines;
    }

    /** When a remark was begun; what was only marked at its end began as long before as it takes. */
    private double fromS(RemarkEntry entry, Remark remark) {
        Double startedS = entry.startedAtS();
        return startedS != null
                ? startedS
                : entry.endedAtS()
                        - words.time(remark.id(), entry.form() == null ? RemarkForm.FULL : entry.form())
                                .map(SpokenTime::seconds)
                                .orElse(0.0);
    }

    /** After an incident nobody is asked for thanks. */
    private List<Line> duties(Act act, List<Count> counts) {
        double untilS = flight.change(Change.Kind.INCIDENT).map(Change::seenS).orElse(Double.POSITIVE_INFINITY);
        List<Remark> due = new ArrayList<>();
        for (Piece piece : figures) {
            if (piece.toS() < untilS && run.hadTimeAfter(piece.toS())) {
                due.addAll(of(act, piece.figureId(), RemarkKind.DUTY));
            }
        }
        if (untilS == Double.POSITIVE_INFINITY && run.hadTimeAfter(flight.endS())) {
            due.addAll(act.remarks().stream()
                    .filter(r -> r.kind() == RemarkKind.DUTY)
                    .toList());
        }
        List<Line> lines = new ArrayList<>();
        for (Remark duty : due) {
            if (said(duty).isEmpty()) {
                lines.add(new Line(
                        About.DUTIES, false, "No key marked this duty as done: " + PracticeWords.glance(duty.text())));
            }
        }
        if (!due.isEmpty()) {
            counts.add(new Count(About.DUTIES, due.size() - lines.size(), due.size()));
        }
        if (lines.isEmpty() && !due.isEmpty()) {
            lines.add(new Line(About.DUTIES, true, "Every duty was done."));
        }
        return lines;
    }

    private static List<Remark> of(Act act, String figureId, RemarkKind kind) {
        return act.figure(figureId).map(Figure::remarks).orElse(List.of()).stream()
                .filter(r -> r.kind() == kind)
                .toList();
    }

    private Optional<RemarkEntry> said(Remark remark) {
        return run.said().stream()
                .filter(e -> e.remarkId().equals(remark.id()) && e.outcome() != RemarkEntry.Outcome.CUT_SHORT)
                .findFirst();
    }
}
