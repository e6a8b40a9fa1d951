package crowdline.live.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import crowdline.live.state.Flown;
import crowdline.live.state.Phase;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A journal can hold anything: what cannot have happened is refused by the name of the value that is wrong. */
class NoSuchEventTest {

    private static Arguments time(String what, DoubleFunction<Object> made) {
        return Arguments.of(what, made);
    }

    static Stream<Arguments> times() {
        return Stream.of(
                time("atS", s -> new FlightEvent.ActChosen(s, "first", "full", List.of(), null)),
                time("atS", s -> new FlightEvent.VariantChosen(s, "full", List.of())),
                time("atS", s -> new FlightEvent.SourceChosen(s, Source.HAND)),
                time("atS", FlightEvent.ActStarted::new),
                time("atS", FlightEvent.Stepped::new),
                time("atS", FlightEvent.SteppedBack::new),
                time("atS", FlightEvent.Held::new),
                time("atS", FlightEvent.Released::new),
                time("atS", FlightEvent.NextDropped::new),
                time("atS", FlightEvent.DropUndone::new),
                time("atS", FlightEvent.NextSwapped::new),
                time("atS", FlightEvent.WentOffPlan::new),
                time("atS", FlightEvent.ActEnded::new),
                time("atS", s -> new FlightEvent.CameBack(s, 0)),
                time("atS", s -> new FlightEvent.ClockAdvanced(s, 0)),
                time("atS", s -> new FlightEvent.AircraftLost(s, 0)),
                time("seenS", s -> new FlightEvent.AircraftLost(5, s)),
                time("atS", FlightEvent.AircraftFound::new),
                time("atS", s -> new FlightEvent.AircraftBegan(s, 0)),
                time("sinceS", s -> new FlightEvent.AircraftBegan(5, s)),
                time("atS", s -> new FlightEvent.AircraftSeen(s, 0)),
                time("atS", FlightEvent.AircraftStrayed::new),
                time("atS", s -> new TalkEvent.RemarkStarted(s, "r", RemarkForm.FULL)),
                time("atS", s -> new TalkEvent.RemarkSaid(s, "r", RemarkForm.FULL)),
                time("atS", s -> new TalkEvent.RemarkLeft(s, "r", true)),
                time("atS", s -> new TalkEvent.RemarkShown(s, "r", RemarkForm.FULL, 0)),
                time("atS", s -> new TalkEvent.RemarkSkipped(s, "r")),
                time("atS", s -> new TalkEvent.FillerTaken(s, "r", RemarkForm.FULL)),
                time("atS", s -> new ShowEvent.ShowOpened(s, "Day", List.of())),
                time("atS", ShowEvent.ShowEnded::new),
                time("atS", IncidentEvent.IncidentOpened::new),
                time("atS", s -> new IncidentEvent.IncidentClosed(s, true)),
                time("atS", s -> new LiveEvent.NoteMade(s, "wet")),
                time("atS", s -> new LiveEvent.NoteWritten(s, "wet")),
                time("atS", LiveEvent.Undone::new),
                time("flying startedAtS", s -> new Phase.Flying(0, s, 0, 0)),
                time("flying heldS", s -> new Phase.Flying(0, 0, s, 0)),
                time("flying confirmedAtS", s -> new Phase.Flying(0, 0, 0, s)),
                time("held startedAtS", s -> new Phase.Held(0, s, 0, 0)),
                time("held heldS", s -> new Phase.Held(0, 0, s, 0)),
                time("held heldSinceS", s -> new Phase.Held(0, 0, 0, s)),
                time("off plan sinceS", s -> new Phase.OffPlan(-1, s)),
                time("act endedAtS", Phase.ActDone::new),
                time("show endedAtS", Phase.ShowDone::new),
                time("flown startedAtS", s -> new Flown("loop", s, 0, null, Source.HAND)),
                time("flown heldS", s -> new Flown("loop", 0, s, null, Source.HAND)));
    }

    @ParameterizedTest
    @MethodSource("times")
    void nothingHappensBeforeTheSessionNorAtNoTime(String what, DoubleFunction<Object> made) {
        assertThat(made.apply(0)).isNotNull();
        for (double never : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> made.apply(never))
                    .withMessage(what + " is " + never + "; it must be 0 or more seconds");
        }
    }

    private static Arguments text(String what, Function<String, Object> made) {
        return Arguments.of(what, made);
    }

    static Stream<Arguments> texts() {
        return Stream.of(
                text("act id", t -> new FlightEvent.ActChosen(1, t, "full", List.of(), null)),
                text("variant name", t -> new FlightEvent.ActChosen(1, "first", t, List.of(), null)),
                text("variant name", t -> new FlightEvent.VariantChosen(1, t, List.of())),
                text("remark id", t -> new TalkEvent.RemarkStarted(1, t, RemarkForm.FULL)),
                text("remark id", t -> new TalkEvent.RemarkSaid(1, t, RemarkForm.FULL)),
                text("remark id", t -> new TalkEvent.RemarkLeft(1, t, true)),
                text("remark id", t -> new TalkEvent.RemarkShown(1, t, RemarkForm.FULL, 0)),
                text("remark id", t -> new TalkEvent.RemarkSkipped(1, t)),
                text("remark id", t -> new TalkEvent.FillerTaken(1, t, RemarkForm.FULL)),
                text("show title", t -> new ShowEvent.ShowOpened(1, t, List.of())),
                text("note text", t -> new LiveEvent.NoteWritten(1, t)),
                text("figure id", t -> new Flown(t, 0, 0, null, Source.HAND)));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void whatIsNamedHasAName(String what, Function<String, Object> made) {
        assertThat(made.apply("x")).isNotNull();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> made.apply(" "))
                .withMessage(what + " is empty; it needs some text");
    }

    private static Arguments index(String what, Function<Integer, Object> made) {
        return Arguments.of(what, made);
    }

    static Stream<Arguments> indices() {
        return Stream.of(
                index("index", i -> new FlightEvent.CameBack(1, i)),
                index("index", i -> new FlightEvent.ClockAdvanced(1, i)),
                index("index", i -> new FlightEvent.AircraftSeen(1, i)),
                index("flying index", i -> new Phase.Flying(i, 0, 0, 0)),
                index("held index", i -> new Phase.Held(i, 0, 0, 0)));
    }

    @ParameterizedTest
    @MethodSource("indices")
    void figuresAreCountedFromNought(String what, Function<Integer, Object> made) {
        assertThat(made.apply(0)).isNotNull();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> made.apply(-1))
                .withMessage(what + " is -1; it must be 0 or more");
    }

    static Stream<Arguments> known() {
        return Stream.of(
                time("slotStartS", s -> new FlightEvent.ActChosen(1, "first", "full", List.of(), s)),
                time("slot startS", SlotTime.InSession::new),
                time("flown endedAtS", s -> new Flown("loop", 0, 0, s, Source.HAND)));
    }

    /** A slot may well have begun before the session. */
    @ParameterizedTest
    @MethodSource("known")
    void whatIsKnownIsANumber(String what, DoubleFunction<Object> made) {
        assertThat(made.apply(-300)).isNotNull();
        for (double never : new double[] {Double.NaN, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> made.apply(never))
                    .withMessage(what + " is " + never + "; it must be a number");
        }
    }
}
