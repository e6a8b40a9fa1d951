package crowdline.console.live;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.next.NextView;
import crowdline.console.live.now.NowView;
import crowdline.console.live.say.SayView;
import crowdline.console.live.strip.StripView;
import crowdline.console.paint.Mark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the Live place shows at one moment, decided.
 *
 * @param strip act, time, early or late, source, hour
 * @param now what is being flown
 * @param say what to say
 * @param next what comes
 * @param incident the incident page in place of all the rest, or null
 * @param warnings what must not go unnoticed, the most pressing first
 * @param handles what the keys take hold of in this view
 * @param told what a key did a moment ago, or null
 */
public record LiveView(
        StripView strip,
        NowView now,
        SayView say,
        NextView next,
        @Nullable IncidentView incident,
        List<Mark> warnings,
        Handles handles,
        @Nullable Mark told) {

    private static final String ENDED = Command.PRACTICE_FLIGHT.key() + " ends the practice and says how it went. "
            + Command.TAKE_BACK.key() + " if it is not over.";

    public LiveView {
        warnings = List.copyOf(warnings);
    }

    /** With nothing to warn of. */
    public LiveView(
            StripView strip,
            NowView now,
            SayView say,
            NextView next,
            @Nullable IncidentView incident,
            Handles handles) {
        this(strip, now, say, next, incident, List.of(), handles, null);
    }

    /**
     * The same of an act that is only practised, and says so.
     *
     * @param over whether the act is over: then it says how to go on
     */
    public LiveView inPractice(boolean over) {
        NowView shown = over ? now.saying("The act is over", ENDED) : now;
        return new LiveView(strip.inPractice(), shown, say, next, incident, warnings, handles, told);
    }

    public LiveView withTold(@Nullable Mark mark) {
        return new LiveView(strip, now, say, next, incident, warnings, handles, mark);
    }
}
