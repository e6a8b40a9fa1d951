package crowdline.app.window.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.ExpectsWarning;
import crowdline.app.window.work.FileWork;
import crowdline.console.paint.Mark;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class OpeningMessagesTest {
    private static String saidOf(FileWork work) {
        return OpeningMessages.faultOf(Path.of("day.json"), work)
                .map(Mark::word)
                .orElse("");
    }

    @Test
    @ExpectsWarning("Opening day.json")
    void whateverGoesWrongIsOneSentence() {
        assertThat(saidOf(() -> {})).isEmpty();
        assertThat(saidOf(() -> {
                    throw new ShowFileException("there is no file day.json");
                }))
                .isEqualTo("there is no file day.json");
        assertThat(saidOf(() -> {
                    throw new OutOfMemoryError("a test's own");
                }))
                .startsWith("day.json needs more memory than there is");
        assertThat(saidOf(() -> {
                    throw new StackOverflowError("a test's own");
                }))
                .startsWith("day.json is nested too deeply to be read");
        assertThat(saidOf(() -> {
                    throw new IllegalStateException("a test's own");
                }))
                .startsWith("The show could not be opened");
    }

    @Test
    void aPictureInPlaceOfAShowIsCalledOne() {
        byte[] jpeg = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0};
        assertThat(saidOf(() -> OpeningMessages.mustBeText(Path.of("holiday.jpg"), jpeg)))
                .isEqualTo(
                        "holiday.jpg is a picture and not a show, so nothing was opened; open a show file, or paste a"
                                + " pilot's list with Ctrl+I in Prepare");
        assertThat(saidOf(() -> OpeningMessages.mustBeText(Path.of("day.json"), new byte[] {'{'})))
                .isEmpty();
    }

    /** The show in sight is another one. */
    @Test
    void aFileWithErrorsIsNamedWithTheFirstOfThem() {
        LocatedFinding note = at(Severity.NOTE, 2, "there is no fact");
        LocatedFinding first = at(Severity.ERROR, 7, "venue.latDeg is NaN");
        LocatedFinding second = at(Severity.ERROR, 9, "date is 3");
        assertThat(OpeningMessages.unusable(Path.of("shows/day.json"), List.of(note, first))
                        .word())
                .isEqualTo("day.json cannot be used until its errors are fixed: line 7, venue.latDeg is NaN");
        assertThat(OpeningMessages.unusable(Path.of("day.json"), List.of(first, note, second))
                        .word())
                .endsWith("is NaN, and 1 more");
    }

    private static LocatedFinding at(Severity severity, int line, String message) {
        return new LocatedFinding(severity, "code", message, "day.json", line, 1, "");
    }

    @Test
    @ExpectsWarning("In the thread main")
    void aFaultInAnyThreadIsASentence() {
        assertThat(OpeningMessages.faultIn(Thread.currentThread(), new OutOfMemoryError("a test's own"))
                        .word())
                .contains("more memory");
        assertThat(OpeningMessages.faultIn(Thread.currentThread(), new IllegalStateException("a test's own"))
                        .word())
                .contains("the show goes on");
    }
}
