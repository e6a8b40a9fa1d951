package crowdline.app;

import crowdline.follow.FollowNow;
import crowdline.live.FlightEvent;
import crowdline.live.LiveState;
import crowdline.live.Phase;
import crowdline.live.Source;
import java.util.Optional;

/**
 * When what the follower says moves the show. A next figure is believed soon, any other only after a while; when the
 * readings go bad the clock stands in, and it hands back when they are good again. Only what somebody has put under the
 * aircraft's lead is moved, and nothing begins an act. Not for several threads.
 */
final class AircraftSteps {
    private static final double SURE = 0.8;
    private static final double VERY_SURE = 0.9;
    /** How long the next figure must be likely, seconds. Tuned: a flicker of the filter is shorter. */
    private static final double NEXT_S = 0.3;
    /** The same for any other figure; being wrong here throws the commentator off. Tuned. */
    private static final double OTHER_S = 1.5;

    private static final double USABLE = 0.5;
    private static final double SILENT_S = 2;
    /** Bad for so long, the clock stands in, seconds. Tuned: a figure's top is often hidden from the receiver for less. */
    private static final double LOST_S = 3;
    /** Good for so long, the aircraft leads again, seconds. Tuned. */
    private static final double FOUND_S = 2;

    /** A step that was told is not told again while it is on its way to the show, seconds. */
    private static final double ON_ITS_WAY_S = 1;

    private int told = -1;
    private double toldS = Double.NEGATIVE_INFINITY;
    private int likely = -1;
    private double likelySinceS;
    private double badSinceS = Double.NaN;
    private double goodSinceS = Double.NaN;
    private boolean clockStandsIn;

    /** True while the clock moves the show only because the readings went bad. */
    boolean clockStandsIn() {
        return clockStandsIn;
    }

    /** What happens to the show now, if anything. */
    Optional<FlightEvent> next(LiveState state, FollowNow now, double nowS) {
        boolean bad = now.silentS() > SILENT_S
                || now.state() == FollowNow.State.UNSURE
                || (now.state() == FollowNow.State.ON_PLAN && now.confidence() < USABLE);
        badSinceS = !bad ? Double.NaN : Double.isNaN(badSinceS) ? nowS : badSinceS;
        goodSinceS = bad ? Double.NaN : Double.isNaN(goodSinceS) ? nowS : goodSinceS;
        if (state.incidentOpen() || !state.course().inTheAir() || state.source() == Source.HAND) {
            clockStandsIn = false;
            return Optional.empty();
        }
        if (state.source() == Source.CLOCK) {
            return clockStandsIn && nowS - goodSinceS >= FOUND_S ? lead(nowS) : Optional.empty();
        }
        clockStandsIn = false;
        if (nowS - badSinceS >= LOST_S) {
            clockStandsIn = true;
            return Optional.of(new FlightEvent.SourceChosen(nowS, Source.CLOCK));
        }
        return step(state, now, nowS);
    }

    private Optional<FlightEvent> lead(double nowS) {
        clockStandsIn = false;
        return Optional.of(new FlightEvent.SourceChosen(nowS, Source.AIRCRAFT));
    }

    private Optional<FlightEvent> step(LiveState state, FollowNow now, double nowS) {
        int figure = now.state() == FollowNow.State.ON_PLAN ? now.figureIndex() : -1;
        if (figure != likely) {
            likely = figure;
            likelySinceS = nowS;
        }
        boolean flying = state.phase() instanceof Phase.Flying;
        if (figure < 0 || (flying && figure == state.course().position()) || state.phase() instanceof Phase.Held) {
            return Optional.empty();
        }
        boolean isNext = flying && state.course().nextIndex().orElse(-1) == figure;
        double waitS = isNext ? NEXT_S : OTHER_S;
        double wanted = isNext ? SURE : VERY_SURE;
        boolean onItsWay = figure == told && nowS - toldS < ON_ITS_WAY_S;
        if (onItsWay || now.confidence() < wanted || nowS - likelySinceS < waitS) {
            return Optional.empty();
        }
        told = figure;
        toldS = nowS;
        return Optional.of(new FlightEvent.AircraftSeen(likelySinceS, figure));
    }
}
