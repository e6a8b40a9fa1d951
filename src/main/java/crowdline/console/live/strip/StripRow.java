package crowdline.console.live.strip;

import crowdline.console.live.row.LiveRow;
import crowdline.console.paint.Box;
import crowdline.console.paint.LabelledCells;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;

/** Paints the strip: small, calm, always there, each value in a place of its own. */
public final class StripRow extends LiveRow<StripView> {
    /** Shares of the width: act, time, drift, source, sureness, reading, hour; tuned to the longest words of each. */
    private static final double[] SHARES = {0.235, 0.14, 0.13, 0.115, 0.15, 0.14, 0.09};
    /** The same with the microphone before the hour. */
    private static final double[] LISTENING = {0.18, 0.13, 0.12, 0.105, 0.135, 0.12, 0.12, 0.09};

    public StripRow(Appearance appearance) {
        super("Strip", appearance);
    }

    @Override
    protected String spoken(StripView v) {
        Mark microphone = v.microphone();
        Mark practice = v.practice();
        return String.join(
                ", ",
                practice == null ? v.act() : practice.word() + ", " + v.act(),
                v.timeInAct(),
                v.drift().word(),
                v.source().word(),
                v.sureness().word(),
                microphone == null ? v.reading().word() : v.reading().word() + ", " + microphone.word(),
                v.hour());
    }

    @Override
    protected void paint(Pen pen, StripView v, Box box) {
        Mark practice = v.practice();
        Mark microphone = v.microphone();
        LabelledCells cells = new LabelledCells(pen, within(box), microphone == null ? SHARES : LISTENING)
                .name(v.act())
                .words("Time in the act", v.timeInAct())
                .mark("Against the plan", v.drift())
                .mark("Following", v.source())
                .mark("Position", v.sureness());
        // In practice there is no receiver, so the flight stands where the last reading does.
        LabelledCells more =
                practice == null ? cells.mark("Last reading", v.reading()) : cells.mark("This flight", practice);
        LabelledCells all = microphone == null ? more : more.mark("Microphone", microphone);
        all.words(practice == null ? "Time now" : "Its clock", v.hour()).paint();
    }
}
