package crowdline.console.live.strip;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import org.jspecify.annotations.Nullable;

/**
 * The strip along the top.
 *
 * @param act how the act is announced
 * @param timeInAct such as "4:12, slot 12:00"
 * @param drift early or late
 * @param source what moves the position
 * @param sureness how sure the position is
 * @param reading age of the last reading, or null where no aircraft is followed and none was read
 * @param hour the clock at the venue
 * @param microphone that the microphone listens, or null if it does not
 * @param practice that this is no act of the day, or null if it is one
 */
public record StripView(
        String act,
        String timeInAct,
        Mark drift,
        Mark source,
        Mark sureness,
        @Nullable Mark reading,
        String hour,
        @Nullable Mark microphone,
        @Nullable Mark practice) {
    private static final Mark LISTENING = new Mark(Form.DISC, Tone.CALM, "Listening");

    private static final Mark PRACTICE = new Mark(Form.DIAMOND, Tone.CAUTION, "PRACTICE");

    /** Of the day. */
    public StripView(
            String act, String timeInAct, Mark drift, Mark source, Mark sureness, @Nullable Mark reading, String hour) {
        this(act, timeInAct, drift, source, sureness, reading, hour, null, null);
    }

    /** The same while the microphone listens. */
    public StripView listening() {
        return new StripView(act, timeInAct, drift, source, sureness, reading, hour, LISTENING, practice);
    }

    /** The same with what is flown in place of the act, where that is hidden. */
    public StripView flying(String figure) {
        return new StripView(figure, timeInAct, drift, source, sureness, reading, hour, microphone, practice);
    }

    /** The same, of an act that is only practised. */
    public StripView inPractice() {
        return new StripView(act, timeInAct, drift, source, sureness, reading, hour, microphone, PRACTICE);
    }
}
