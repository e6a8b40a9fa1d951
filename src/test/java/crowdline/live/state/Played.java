package crowdline.live.state;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.FigureNow;
import crowdline.live.now.LiveNow;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A show played event by event in a test. */
public final class Played {
    public static final List<String> FIGURES = List.of("loop", "roll", "spin", "pass");
    /** Seconds of each figure of {@link #FIGURES}. */
    public static final Durations DURATIONS =
            index -> List.of(10.0, 8.0, 20.0, 6.0).get(index);

    public LiveState state = LiveState.initial();

    @Nullable
    public String refusal;

    /** A show of three acts with the first one chosen; its slot begins at 60 s. */
    public static Played waiting() {
        return new Played()
                .with(new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first", "second", "third")))
                .with(new FlightEvent.ActChosen(1, "first", "full", FIGURES, 60.0));
    }

    /** The first act, started at 100 s. */
    public static Played flying() {
        return waiting().with(new FlightEvent.ActStarted(100));
    }

    public Played with(LiveEvent... events) {
        for (LiveEvent event : events) {
            Step step = Live.next(state, event);
            if (step instanceof Step.Moved moved) {
                state = moved.state();
                refusal = null;
            } else if (step instanceof Step.Refused refused) {
                refusal = refused.reason();
            }
        }
        return this;
    }

    /** The clock does everything it has to do until {@code nowS}. */
    Played clockUntil(double nowS) {
        for (var due = ClockAdvance.due(state, DURATIONS, nowS);
                due.isPresent();
                due = ClockAdvance.due(state, DURATIONS, nowS)) {
            with(due.get());
        }
        return this;
    }

    public LiveNow at(double nowS) {
        return LiveNow.of(state, DURATIONS, nowS, Instant.EPOCH);
    }

    double timeIn(double nowS) {
        FigureNow figure = at(nowS).figure();
        return figure == null ? Double.NaN : figure.timeInS();
    }
}
