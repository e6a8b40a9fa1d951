package crowdline.console.live.strip;

import crowdline.console.live.row.LiveRow;
import crowdline.console.paint.Box;
import crowdline.console.paint.LabelledCells;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Paints the strip: small, calm, always there, each value in a place of its own. */
public final class StripRow extends LiveRow<StripView> {
    /** Shares of the width: act, time, drift, source, sureness, reading, hour; tuned to the longest words of each. */
    private static final double[] SHARES = {0.235, 0.14, 0.13, 0.115, 0.15, 0.14, 0.09};
    /** The same with the microphone before the hour. */
    private static final double[] LISTENING = {0.18, 0.13, 0.12, 0.105, 0.135, 0.12, 0.12, 0.09};
    /** Without a receiver: act, time, drift, source, hour, which say by themselves what they are. */
    private static final double[] FEW = {0.33, 0.2, 0.175, 0.165, 0.13};

    private static final double[] FEW_LISTENING = {0.25, 0.18, 0.155, 0.145, 0.15, 0.12};

    public StripRow(Appearance appearance) {
        super("Strip", appearance);
    }

    @Override
    protected String spoken(StripView v) {
        Mark practice = v.practice();
        return String.join(
                ", ",
                practice == null ? v.act() : practice.word() + ", " + v.act(),
                v.timeInAct(),
                v.drift().word(),
                v.source().word(),
                v.sureness().word() + more(v.reading()) + more(v.microphone()),
                v.hour());
    }

    private static String more(@Nullable Mark mark) {
        return mark == null ? "" : ", " + mark.word();
    }

    @Override
    protected void paint(Pen pen, StripView v, Box box) {
        Mark practice = v.practice();
        Mark microphone = v.microphone();
        // In practice there is no receiver, so the flight stands where the last reading does.
        Mark last = practice == null ? v.reading() : practice;
        if (last == null) {
            few(pen, v, within(box));
            return;
        }
        LabelledCells cells = new LabelledCells(pen, within(box), microphone == null ? SHARES : LISTENING)
                .name(v.act())
                .words("Time in the act", v.timeInAct())
                .mark("Against the plan", v.drift())
                .mark("Following", v.source())
                .mark("Position", v.sureness())
                .mark(practice == null ? "Last reading" : "This flight", last);
        LabelledCells all = microphone == null ? cells : cells.mark("Microphone", microphone);
        all.words(practice == null ? "Time now" : "Its clock", v.hour()).paint();
    }

    /** Nothing of a position that nobody reads: what is left is larger. */
    private static void few(Pen pen, StripView v, Box box) {
        Mark microphone = v.microphone();
        Mark source = v.source();
        LabelledCells cells = new LabelledCells(pen, box, microphone == null ? FEW : FEW_LISTENING)
                .name(v.act())
                .words("", v.timeInAct())
                .mark("", v.drift())
                .mark(
                        "",
                        new Mark(
                                source.form(),
                                source.tone(),
                                "By " + source.word().toLowerCase(Locale.ROOT)));
        LabelledCells all = microphone == null ? cells : cells.mark("", microphone);
        all.words("", v.hour()).paint();
    }
}
