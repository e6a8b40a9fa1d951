package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.IncidentEvent.IncidentOpened;
import crowdline.live.event.LiveEvent.NoteMade;
import crowdline.live.event.LiveEvent.NoteWritten;
import crowdline.live.event.LiveEvent.Undone;
import org.junit.jupiter.api.Test;

/** Notes made on the fly: the time at once, the words when there was time for them. */
class NotesTest {
    @Test
    void momentIsNotedAtOnceWithItsFigure() {
        Played played = Played.flying().with(new NoteMade(103, ""));
        assertThat(played.state.notes()).containsExactly(new Note(103, "", "first", "loop"));
    }

    @Test
    void wordsThatComeLaterKeepTheMoment() {
        Played played =
                Played.flying().with(new NoteMade(103, ""), new Stepped(110), new NoteWritten(112, "smoke late"));
        assertThat(played.state.notes()).containsExactly(new Note(103, "smoke late", "first", "loop"));
        assertThat(played.state.figureId()).isNotEqualTo("loop");
    }

    @Test
    void wordsGoToTheNewestNote() {
        Played played =
                Played.flying().with(new NoteMade(103, ""), new NoteMade(104, ""), new NoteWritten(105, "second"));
        assertThat(played.state.notes()).extracting(Note::text).containsExactly("", "second");
    }

    @Test
    void takingBackTakesTheNoteAndNotTheKeyBeforeIt() {
        Played played = Played.flying().with(new Stepped(103), new NoteMade(104, ""));
        String figure = played.state.figureId();
        played.with(new NoteWritten(105, "words"), new Undone(106));
        assertThat(played.state.notes()).isEmpty();
        assertThat(played.state.figureId()).isEqualTo(figure);
        played.with(new Undone(107));
        assertThat(played.state.figureId()).isEqualTo("loop");
    }

    @Test
    void wordsForANoteTakenBackAreRefused() {
        Played played = Played.flying().with(new NoteMade(103, ""), new Undone(104), new NoteWritten(105, "late"));
        assertThat(played.refusal).isEqualTo("The note was taken back: press J to note this moment.");
    }

    @Test
    void incidentDoesNotStopNotes() {
        Played played = Played.flying().with(new IncidentOpened(103), new NoteMade(104, ""));
        assertThat(played.state.notes()).hasSize(1);
    }
}
