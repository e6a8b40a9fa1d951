package crowdline.live.state;

/** What an event did. */
public sealed interface Step {

    /** It was possible; this is the state now. */
    record Moved(LiveState state) implements Step {}

    /** It was not possible and changed nothing; {@code reason} is one sentence for the commentator. */
    record Refused(String reason) implements Step {}
}
