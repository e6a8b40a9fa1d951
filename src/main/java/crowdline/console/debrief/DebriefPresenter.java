package crowdline.console.debrief;

import crowdline.console.debrief.DebriefView.FigureRow;
import crowdline.console.debrief.DebriefView.Line;
import crowdline.console.debrief.DebriefView.RunView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.Fate;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.RemarkRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.Debrief.Told;
import crowdline.live.debrief.DutyRun;
import crowdline.live.event.Source;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Hour;
import crowdline.sheet.DebriefSheet;
import crowdline.sheet.DutySheet;
import crowdline.sheet.day.OtherDay;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** Says what the Debrief place shows. Pure. */
public final class DebriefPresenter {
    private static final String UNKNOWN = "–";

    private DebriefPresenter() {}

    /**
     * The view of a debrief.
     *
     * @param hour the clock at the venue at a second of the session
     * @param other another day to set beside it, or null
     */
    public static DebriefView view(Debrief debrief, DoubleFunction<LocalTime> hour, @Nullable OtherDay other) {
        List<RemarkRun> duties = debrief.remarks(RemarkKind.DUTY);
        boolean all = duties.stream().allMatch(r -> r.told() == Told.SAID);
        String thanks = DebriefSheet.thanks(debrief);
        List<Line> changes = new ArrayList<>();
        debrief.changes().forEach(c -> changes.add(new Line(new Mark(Form.DIAMOND, Tone.CAUTION, "Change"), c, "")));
        if (changes.isEmpty() && !debrief.runs().isEmpty()) {
            changes.add(new Line(new Mark(Form.RING, Tone.CALM, "Nothing"), "Nothing stands out.", ""));
        }
        debrief.day().duties().forEach(duty -> changes.add(duty(duty, hour)));
        DebriefSheet.announcements(debrief, hour)
                .forEach(told -> changes.add(new Line(new Mark(Form.RING, Tone.CALM, "Announced"), told, "")));
        DebriefSheet.notes(debrief, hour)
                .forEach(note -> changes.add(new Line(new Mark(Form.RING, Tone.CALM, "Note"), note, "")));
        return new DebriefView(
                debrief.showTitle(),
                all ? new Mark(Form.DISC, Tone.GOOD, thanks) : new Mark(Form.DIAMOND, Tone.CAUTION, thanks),
                debrief.runs().stream().map(r -> run(r, hour)).toList(),
                DebriefSheet.incidents(debrief, hour),
                changes,
                debrief.runs().isEmpty()
                        ? "No act has been flown yet. Press F5 for Live and Space as each figure begins; what was flown"
                                + " and what you marked with S then appear here beside the plan."
                        : "",
                new FlownCharts(debrief, hour, other));
    }

    static String when(Run run, DoubleFunction<LocalTime> hour) {
        Double endS = run.sessionEndS();
        return run.variant()
                + (run.run() > 1 ? ", run " + run.run() : "")
                + ", " + Hour.toTheSecond(hour.apply(run.sessionStartS()))
                + (endS == null ? ", in the air" : " to " + Hour.toTheSecond(hour.apply(endS)));
    }

    private static Line duty(DutyRun duty, DoubleFunction<LocalTime> hour) {
        Mark mark = duty.saidCount() >= duty.asked().times()
                ? new Mark(Form.DISC, Tone.GOOD, "Duty")
                : new Mark(Form.DIAMOND, Tone.CAUTION, "Duty");
        return new Line(mark, DutySheet.count(duty) + ": " + duty.text(), DutySheet.when(duty, hour));
    }

    private static RunView run(Run run, DoubleFunction<LocalTime> hour) {
        long said = run.remarks().stream().filter(r -> r.told() == Told.SAID).count();
        return new RunView(
                run.title(),
                when(run, hour),
                DebriefSheet.total(run) + off(run),
                run.figures().stream().map(DebriefPresenter::figure).toList(),
                said + " of " + run.remarks().size() + " remarks marked",
                run.remarks().stream().map(r -> remark(r, run, hour)).toList());
    }

    private static String off(Run run) {
        double offS =
                run.offPlan().stream().mapToDouble(o -> o.toS() - o.fromS()).sum();
        return offS == 0 ? "" : ". Off the plan for " + Seconds.left(offS);
    }

    private static FigureRow figure(FigureRun f) {
        String fate = DebriefSheet.word(f.fate());
        return new FigureRow(
                f.name() + (fate.isEmpty() ? "" : " (" + fate + ")"),
                clock(f.plannedStartS()),
                clock(f.startS()),
                f.fate() == Fate.FLOWN ? signed(f.lateS()) : UNKNOWN,
                tenths(f.plannedS()),
                tenths(f.flownS()),
                differs(f));
    }

    private static String differs(FigureRun f) {
        String held = f.heldS() > 0 ? String.format(Locale.UK, ", held %.0f s", f.heldS()) : "";
        if (f.measured()) {
            return signed(f.longerS()) + held;
        }
        return f.mark() == Source.CLOCK ? "by the clock" + held : UNKNOWN + held;
    }

    private static Line remark(RemarkRun remark, Run run, DoubleFunction<LocalTime> hour) {
        Mark mark = switch (remark.told()) {
            case SAID -> new Mark(Form.DISC, Tone.GOOD, "Marked");
            case SKIPPED -> new Mark(Form.CROSS, Tone.CALM, "Left out");
            case CUT_SHORT -> new Mark(Form.DIAMOND, Tone.CAUTION, "Begun, not marked");
            case SHOWN -> new Mark(Form.RING, Tone.CALM, "Shown, not marked");
            case NOT_MARKED ->
                remark.kind() == RemarkKind.DUTY && run.sessionEndS() != null
                        ? new Mark(Form.DIAMOND, Tone.CAUTION, "Not marked")
                        : new Mark(Form.RING, Tone.CALM, "Not marked");
        };
        Double atS = remark.sessionAtS();
        return new Line(
                mark,
                ShowLookup.word(remark.kind()) + ": " + remark.text(),
                atS == null ? "" : Hour.toTheSecond(hour.apply(atS)));
    }

    private static String clock(@Nullable Double seconds) {
        return seconds == null ? UNKNOWN : Seconds.planned(seconds);
    }

    private static String tenths(@Nullable Double seconds) {
        return seconds == null ? UNKNOWN : String.format(Locale.UK, "%.1f s", seconds);
    }

    private static String signed(@Nullable Double seconds) {
        return seconds == null ? UNKNOWN : DebriefSheet.signed(seconds).replace('-', '−');
    }
}
