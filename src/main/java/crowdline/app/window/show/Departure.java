package crowdline.app.window.show;

import crowdline.live.state.LiveState;
import crowdline.running.RunningShow;
import java.util.Objects;
import java.util.Optional;

/** Whether a running show may be left: never while an act is in the air or the incident page is open. */
public final class Departure {
    private Departure() {}

    /**
     * Why another show is not opened now, and what to do; empty if it may be.
     *
     * @param other what was to be opened, in words
     */
    static Optional<String> refusal(RunningShow running, String other) {
        LiveState state = running.desk().snapshot().state();
        boolean flying = state.course().inTheAir();
        if (state.incidentOpen()) {
            return Optional.of("The incident page is open: leave it "
                    + (flying ? "and end the act with E in Live before opening " : "before opening ") + other);
        }
        return flying
                ? Optional.of(
                        act(running, state) + " is in the air: press E in Live when it is over, then open " + other)
                : Optional.empty();
    }

    /**
     * Why the window is not closed at once; empty if nothing is going on.
     *
     * @param goesOn whether the show is gone on with when it is opened again
     */
    public static Optional<String> warning(RunningShow running, boolean goesOn) {
        LiveState state = running.desk().snapshot().state();
        if (!state.mustNotBeLeft()) {
            return Optional.empty();
        }
        String what = state.incidentOpen() ? "The incident page is open" : act(running, state) + " is in the air";
        return Optional.of(what + ": close again to leave. "
                + (goesOn ? "It will carry on where it was." : "The demo starts again next time."));
    }

    private static String act(RunningShow running, LiveState state) {
        return running.loaded()
                .show()
                .act(Objects.requireNonNullElse(state.actId(), ""))
                .map(act -> act.title())
                .orElse("The act");
    }
}
