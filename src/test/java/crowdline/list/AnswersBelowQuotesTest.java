package crowdline.list;

import static crowdline.list.Flown.assertFlown;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import crowdline.show.figure.Placing.Heading;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a pilot answers between the quoted lines of a list. */
class AnswersBelowQuotesTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<ListLine> read(String... lines) {
        return READER.read(String.join("\n", lines)).lines();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "yes, but one and a half rolls down now | loop half-Cuban slow-roll spin landing",
                "make that a four-point please, left to right | loop four-point-roll slow-roll spin landing",
                "ok, and in front of it a barrel roll | loop barrel-roll half-Cuban slow-roll spin landing",
                "yes, then a flick roll | loop half-Cuban flick-roll slow-roll spin landing",
                "swap: this goes BEFORE the loop | half-Cuban loop slow-roll spin landing",
                "this one goes after the slow roll | loop slow-roll half-Cuban spin landing",
                "NO - out. Engine mount. Nothing in its place. | loop slow-roll spin landing"
            })
    void anAnswerBelowAQuotedLineIsSaidOfIt(String answer, String flown) {
        List<ListLine> lines = read(
                "> 1. Loop",
                "yes",
                "> 2. Half Cuban",
                answer,
                "> 3. Slow roll",
                "ok",
                "> 4. Spin",
                "yes",
                "> 5. Landing",
                "yes");

        assertFlown(lines, flown);
        assertThat(lines.get(0).note()).isNull();
    }

    @Test
    void whatAnAnswerSaysOfAnotherFigureIsSaidOfThat() {
        ListLine roll = read(
                        "> 1. Loop",
                        "yes",
                        "> 2. Slow roll",
                        "make that a four-point please, left to right",
                        "> 3. Spin",
                        "ok")
                .get(1);

        assertThat(roll.heading()).isEqualTo(Heading.RIGHT);
    }
}
