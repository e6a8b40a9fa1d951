package crowdline.storage.journal;

import crowdline.live.state.LiveState;
import java.util.List;

/**
 * A journal ready to be written, and the state it left the show in.
 *
 * @param journal open for more
 * @param state where the show is
 * @param resumed true if it goes on from an unfinished journal
 * @param events how many events were read from it
 * @param notices sentences for the commentator about what was found, such as a damaged journal
 */
public record JournalOpening(Journal journal, LiveState state, boolean resumed, int events, List<String> notices) {
    public JournalOpening {
        notices = List.copyOf(notices);
    }
}
