package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import crowdline.show.check.LocatedFinding;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One change to a sound file, and the one sentence it must give, in its place. */
class BadInputTest {
    private static Stream<Arguments> changes() {
        return Stream.of(
                arguments(
                        "\"heightFt\": 2000",
                        "\"heightFt\": 20",
                        "10:108",
                        "air.windsAloft[0].heightFt is 20; it must be from 34 to 20000"),
                arguments(
                        "\"kt\": 20}",
                        "\"kt\": 20}, {\"heightFt\": 900, \"fromDeg\": 250, \"kt\": 10}",
                        "10:10",
                        "air: windsAloft has 900.0 ft after 2000.0 ft; each height must be above the one before"),
                arguments(
                        "\"massKg\": 640",
                        "\"massKg\": -640",
                        "12:50",
                        "airframes[0].massKg is -640; it must be from 20 to 700000"),
                arguments(
                        "\"massKg\": 640",
                        "\"massKg\": NaN",
                        "12:50",
                        "airframes[0].massKg is NaN; it must be an ordinary number"),
                arguments(
                        "\"massKg\": 640",
                        "\"massKg\": -Infinity",
                        "12:50",
                        "airframes[0].massKg is -Infinity; it must be an ordinary number"),
                arguments(
                        "\"massKg\": 640",
                        "\"massKg\": 1e999",
                        "12:50",
                        "airframes[0].massKg is 1e999, too large a number; it must be an ordinary number"),
                arguments(
                        "\"massKg\": 640",
                        "\"massKg\": \"640\"",
                        "12:50",
                        "airframes[0].massKg is \"640\"; it must be a number; take the quotes away"),
                arguments(
                        "\"massKg\": 640",
                        "\"massKg\": null",
                        "12:50",
                        "airframes[0].massKg is null; it must be a number, or left out if it may be"),
                arguments(
                        "\"massKg\": 640, ",
                        "",
                        "12:5",
                        "airframes[0] has no \"massKg\" (mass as flown in kilograms); add it"),
                arguments(
                        "\"powerKw\": 230,",
                        "",
                        "12:5",
                        "airframes[0] has no \"powerKw\" (shaft power at full throttle at sea level in kilowatts); add it"),
                arguments(
                        "\"id\": \"wren\",",
                        "\"id\": \"wren\", \"glider\": true,",
                        "13:17",
                        "airframes[0].powerKw is 230; it must be at most 0, as a glider has none"),
                arguments(
                        "\"heightFt\": 1500",
                        "\"heightFt\": 1500, \"heightFt\": 3",
                        "26:63",
                        "the key \"heightFt\" appears twice in acts[0].entry, first in line 26; keep one of them"),
                arguments(
                        "\"heading\": \"right\"",
                        "\"heading\": \"rigth\"",
                        "26:85",
                        "acts[0].entry.heading is \"rigth\"; it must be one of right, left, away, crowd; did you mean"
                                + " \"right\"?"),
                arguments(
                        "{\"do\": \"line\", \"toAlongM\": 0}",
                        "{\"do\": \"line\"}",
                        "32:11",
                        "acts[0].figures[1].elements[0] has none of seconds, metres, toKt, toFt, toAlongM, radii,"
                                + " toStalls, toEntryHeight, toEntryLine; it needs exactly one of them"),
                arguments(
                        "{\"do\": \"line\", \"toAlongM\": 0}",
                        "{\"do\": \"line\", \"toFt\": 9, \"toAlongM\": 0}",
                        "32:11",
                        "acts[0].figures[1].elements[0] has toFt and toAlongM; it needs exactly one of seconds, metres,"
                                + " toKt, toFt, toAlongM, radii, toStalls, toEntryHeight,"
                                + " toEntryLine"),
                arguments(
                        "\"loadG\": 4.5",
                        "\"loadG\": 4.5, \"radiusM\": 200",
                        "33:11",
                        "acts[0].figures[1].elements[1] has loadG and radiusM; it may have one of loadG, radiusM,"
                                + " roundFromG, tightest, corner, over"),
                arguments(
                        "\"degrees\": 360, \"loadG\"",
                        "\"degrees\": 360, \"toPathDeg\": 0, \"loadG\"",
                        "33:11",
                        "acts[0].figures[1].elements[1] has degrees and toPathDeg; it needs exactly one of degrees,"
                                + " toPathDeg"),
                arguments(
                        "\"do\": \"line\"",
                        "\"do\": \"lien\"",
                        "32:18",
                        "acts[0].figures[1].elements[0].do is \"lien\"; it must be one of line, arc, roll, reversal, flick, spin,"
                                + " pivot, slide, hover-roll, tumble, turn, run, reposition; did you mean \"line\"?"),
                arguments(
                        "\"seconds\": 8, ",
                        "",
                        "34:11",
                        "acts[0].figures[1].elements[2] has no \"seconds\" (time it takes in seconds; a slow roll needs it);"
                                + " add it"),
                arguments(
                        "\"14:30\"",
                        "\"14.30\"",
                        "25:19",
                        "acts[0].slotStart is \"14.30\"; it must be written like 14:30"),
                arguments("2027-06-12", "2027-02-30", "4:11", "date: \"2027-02-30\" is not a real date"),
                arguments(
                        "Europe/London",
                        "Europe/Lodnon",
                        "7:61",
                        "venue.timeZone: there is no time zone \"Europe/Lodnon\"; did you mean \"Europe/London\"?"),
                arguments(
                        "\"fromS\": 2, \"toS\": 5",
                        "\"fromS\": 5, \"toS\": 2",
                        "36:20",
                        "acts[0].figures[1].quiets[0]: quiet toS is 2.0; it must be after fromS, 5.0"),
                arguments("Harrowmere Air Day", "  ", "3:12", "title is empty; it needs some text"),
                arguments(
                        "\"variants\": [",
                        "\"variants\": [], \"variants-before\": [",
                        "42:18",
                        "acts[0].variants is an empty list; it needs at least one entry"),
                arguments("52.1", "152.1", "6:37", "venue.latDeg is 152.1; it must be from -90 to 90"),
                arguments(
                        "\"once\": true",
                        "\"once\": \"true\"",
                        "48:87",
                        "remarks[0].once is \"true\"; it must be true or false; take the quotes away"),
                arguments(
                        "\"crowdline\": 1",
                        "\"crowdline\": 2",
                        "2:16",
                        "the file says it is version 2; this program reads version 1, so use the program it was written"
                                + " with or a newer one"),
                arguments(
                        "\"crowdline\": 1",
                        "\"crowdline\": \"one\"",
                        "2:16",
                        "the file says it is version \"one\"; this program reads version 1, so use the program it was"
                                + " written with or a newer one"),
                arguments(
                        "\"crowdline\": 1,",
                        "",
                        "1:1",
                        "the file does not say that it is a show file; it needs \"crowdline\": 1"),
                arguments(
                        "\"date\": \"2027-06-12\",",
                        "\"date\": \"2027-06-12\"",
                        "5:3",
                        "a comma or colon is missing before this \""),
                arguments(
                        "for the moment.\"]",
                        "for the moment.\",]",
                        "52:57",
                        "there is a comma before the closing ]; take the comma out"),
                arguments(
                        "\"cloudBaseFt\": 3800}",
                        "\"cloudBaseFt\": 3800} // low",
                        "10:163",
                        "comments are not allowed in JSON; take it out"),
                arguments("\"title\": \"Harrow", "title: \"Harrow", "3:3", "a name needs double quotes round it"),
                arguments(
                        "\"title\": \"Harrow",
                        "'title': \"Harrow",
                        "3:3",
                        "names and text need straight double quotes, not '"),
                arguments(
                        "Harrowmere Air",
                        "Harrowmere\nAir",
                        "3:23",
                        "a text runs over the end of its line; close it with a quote, or write \\n for a new line"));
    }

    @ParameterizedTest
    @MethodSource("changes")
    void oneChangeGivesOneSentenceInItsPlace(String from, String to, String place, String message) {
        ShowReading reading = Fixture.read(Fixture.changed(from, to));
        assertThat(reading.findings())
                .filteredOn(f -> !f.code().equals("unknown-key"))
                .singleElement()
                .satisfies(f -> assertThat(f.asLine()).isEqualTo("day.json:" + place + ": error: " + message));
        assertThat(reading.show()).isNull();
    }

    @Test
    void soundFileGivesNoFindings() {
        ShowReading reading = Fixture.read(Fixture.FULL);
        assertThat(reading.findings()).isEmpty();
        assertThat(reading.show()).isNotNull();
    }

    @Test
    void misspeltKeyIsANoteAtTheKeyWithTheNearestName() {
        ShowReading reading = Fixture.read(Fixture.changed("\"title\": \"Ada's own\"", "\"titel\": \"Ada's own\""));
        assertThat(reading.findings())
                .singleElement()
                .satisfies(
                        f -> assertThat(f.asLine())
                                .isEqualTo(
                                        "day.json:30:41: note: the key \"titel\" in acts[0].figures[1] is not known to this program; did you mean \"title\"?"));
        assertThat(reading.show()).isNotNull();
    }

    @Test
    void oneFaultDoesNotHideAnother() {
        String text = Fixture.changed("\"massKg\": 640", "\"massKg\": NaN").replace("rigth", "right");
        text = text.replace("\"heading\": \"right\"", "\"heading\": \"up\"").replace("\"weight\": 2", "\"weight\": 0");
        assertThat(Fixture.read(text).findings())
                .extracting(LocatedFinding::path)
                .containsExactly(
                        "airframes[0].massKg", "acts[0].entry.heading", "acts[0].figures[1].remarks[0].weight");
    }

    @Test
    void oneRefusedRecordDoesNotHideAnother() {
        String text = Fixture.changed("\"fromS\": 2, \"toS\": 5", "\"fromS\": 5, \"toS\": 2")
                .replace("\"latestS\": -1", "\"latestS\": -9")
                .replace("2027-06-12", "2027-06-31");
        assertThat(Fixture.read(text).findings())
                .extracting(LocatedFinding::path)
                .containsExactly("date", "acts[0].figures[1].quiets[0]", "acts[0].figures[1].remarks[0]");
    }

    @Test
    void htmlInATextIsKeptAsText() {
        ShowReading reading = Fixture.read(Fixture.changed("Harrowmere Air Day", "<html><b>Air</b> & Day"));
        assertThat(reading.findings()).isEmpty();
        assertThat(reading.show())
                .isNotNull()
                .satisfies(s -> assertThat(s.title()).isEqualTo("<html><b>Air</b> & Day"));
    }

    @Test
    void oddKeysAreQuotedInPaths() {
        ShowReading reading = Fixture.read(Fixture.changed("\"Quillan\": \"KWIL-an\"", "\"St. Ives\": \"\""));
        assertThat(reading.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.asLine())
                        .isEqualTo("day.json:49:25: error: sayAs[\"St. Ives\"] is empty; it needs some text"));
    }
}
