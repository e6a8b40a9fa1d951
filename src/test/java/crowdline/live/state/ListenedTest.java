package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.HeardEvent;
import crowdline.live.event.HeardEvent.ListeningBegan;
import crowdline.live.event.HeardEvent.ListeningEnded;
import crowdline.live.event.HeardEvent.TalkHeard;
import crowdline.live.event.IncidentEvent.IncidentOpened;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent.ShowOpened;
import crowdline.live.state.Listened.Span;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the microphone told is kept with the running show. */
class ListenedTest {
    private static Listened after(HeardEvent... events) {
        return Stream.of(events).reduce(Listened.NEVER, Listened::next, (a, b) -> b);
    }

    @Test
    void itListensFromTheBeginningToTheEnd() {
        Listened listened = after(new ListeningBegan(10), new ListeningEnded(70));

        assertThat(listened.isOn()).isFalse();
        assertThat(listened.spans()).containsExactly(new Span(10, 70));
        assertThat(after(new ListeningBegan(10)).isOn()).isTrue();
    }

    @Test
    void aTimeWhoseEndNobodyToldEndsWithTheLastTalkInIt() {
        Listened crashed = after(new ListeningBegan(10), new TalkHeard(31.5, 20, 30), new ListeningBegan(100));

        assertThat(crashed.spans()).containsExactly(new Span(10, 30), new Span(100, 100));
        assertThat(crashed.isOn()).isTrue();
    }

    @Test
    void anEndWithoutABeginningIsNone() {
        assertThat(after(new ListeningEnded(70))).isEqualTo(Listened.NEVER);
    }

    @Test
    void talkIsHeardWhateverGoesOn() {
        LiveState state = LiveState.initial();
        for (LiveEvent event : List.of(
                new ShowOpened(0, "Day", List.of()),
                new ListeningBegan(1),
                new IncidentOpened(2),
                new TalkHeard(9, 3, 7.5))) {
            state = ((Step.Moved) Live.next(state, event)).state();
        }

        assertThat(state.listened().talk()).containsExactly(new Span(3, 7.5));
        assertThat(state.takeBack()).isEmpty();
    }
}
