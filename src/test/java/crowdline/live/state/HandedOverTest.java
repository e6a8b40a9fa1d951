package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.LiveEvent.HandedOver;
import crowdline.live.event.ShowEvent;
import java.util.List;
import org.junit.jupiter.api.Test;

class HandedOverTest {
    private static LiveState after(LiveEvent... events) {
        LiveState state = ((Step.Moved)
                        Live.next(LiveState.initial(), new ShowEvent.ShowOpened(0, "Day", List.of("first"))))
                .state();
        for (LiveEvent event : events) {
            state = ((Step.Moved) Live.next(state, event)).state();
        }
        return state;
    }

    @Test
    void theTurnGoesToTheOtherAndBack() {
        assertThat(after().otherSpeaks()).isFalse();
        assertThat(after(new HandedOver(1, true)).otherSpeaks()).isTrue();
        assertThat(after(new HandedOver(1, true), new HandedOver(2, false)).otherSpeaks())
                .isFalse();
    }

    @Test
    void takingBackGivesItBackToWhoHadIt() {
        assertThat(after(new HandedOver(1, true), new LiveEvent.Undone(2)).otherSpeaks())
                .isFalse();
        assertThat(after(new HandedOver(1, true), new HandedOver(2, false), new LiveEvent.Undone(3))
                        .otherSpeaks())
                .isTrue();
    }

    @Test
    void nobodyIsHandedAnythingWhileTheIncidentPageIsOpen() {
        LiveState open = after(new IncidentEvent.IncidentOpened(1));
        assertThat(Live.next(open, new HandedOver(2, true))).isInstanceOf(Step.Refused.class);
    }
}
