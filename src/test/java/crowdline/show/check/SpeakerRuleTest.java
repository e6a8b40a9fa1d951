package crowdline.show.check;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Act;
import crowdline.show.Gaps;
import crowdline.show.HarbourDay;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpeakerRuleTest {
    private static List<String> found(String speaker, String... speakers) {
        return found(
                new SpeakerRule(),
                Remark.of("hello", RemarkKind.FACT, "Good afternoon.").saidBy(speaker),
                List.of(),
                speakers);
    }

    private static List<String> found(ShowRule rule, Remark remark, List<Piece> pieces, String... speakers) {
        Figure figure =
                new Figure("loop", "loop", null, null, null, 10.0, null, null, null, false, List.of(), List.of(remark));
        Act act = HarbourDay.act("a", LocalTime.of(14, 0), List.of(figure), remark);
        Show show = HarbourDay.of(List.of(act), remark)
                .withGaps(new Gaps(50, pieces))
                .withSpeakers(new Speakers(List.of(speakers).stream()
                        .map(name -> new Speaker(name, false))
                        .toList()));
        List<String> found = new ArrayList<>();
        rule.check(
                show,
                new Catalogue(List.of()),
                f -> found.add(f.severity() + " " + f.code() + " " + f.path() + ": " + f.message()));
        return found;
    }

    @Test
    void aNameNobodyHasIsFoundWhereverItStandsWithTheNearestThatIsThere() {
        assertThat(found("Ben", "Ann", "Ben")).isEmpty();
        assertThat(found("ben", "Ann", "Ben")).as("however it is written").isEmpty();
        List<String> found = found("Bem Varley", "Ann", "Ben Varley");
        assertThat(found).hasSize(3);
        assertThat(found.get(0))
                .startsWith("WARNING speaker-unknown remarks[0].speaker: the remark \"hello\" is for \"Bem Varley\"")
                .contains("Ben Varley");
        assertThat(found.get(1)).contains("acts[0].remarks[0].speaker");
        assertThat(found.get(2)).contains("acts[0].figures[0].remarks[0].speaker");
    }

    @Test
    void aShowWithoutSpeakersSaysWhatToDo() {
        assertThat(found("Ben").get(0))
                .endsWith("whoever is at the console says it; add the speaker, or name one who" + " is there");
    }

    @Test
    void twoOfOneNameAreFound() {
        assertThat(found("Ben", "Ben", "ben"))
                .containsExactly("WARNING speaker-twice speakers[1].name: two speakers are called \"ben\", so only the"
                        + " first of them is found; give each a name of their own");
    }

    @Test
    void aPieceAndItsPartsAreForWhoIsThereToo() {
        Piece piece = new Piece(
                "p",
                "The tower",
                null,
                "Bem",
                List.of(
                        new Piece.Part("Hello.", 0),
                        new Piece.Part("And?", 0, "Cleo", new Translation("fr", "Et ?", "Claire"))));
        List<String> found = found(
                new SpeakerRule(),
                Remark.of("hello", RemarkKind.FACT, "Good afternoon."),
                List.of(piece),
                "Ann",
                "Ben");
        assertThat(found)
                .as("who says the piece is said once")
                .hasSize(3)
                .anyMatch(f -> f.contains("gaps.pieces[0].speaker: the piece \"The tower\" is for \"Bem\""))
                .anyMatch(f -> f.contains(
                        "gaps.pieces[0].parts[1].speaker: a part of the piece \"The tower\" is for" + " \"Cleo\""))
                .anyMatch(f -> f.contains("gaps.pieces[0].parts[1].otherLanguage.speaker"));
    }

    @Test
    void anotherLanguageThatIsOlderOrHasNoShortFormIsFoundWhereItStands() {
        Remark remark = new Remark("hello", RemarkKind.FACT, "Good afternoon to you.", "Hello.", null, null, 1, false);
        Translation french = new Translation("fr", "Bonjour \u00e0 vous.", "Bonjour.", null, false);
        assertThat(found(new LanguageRule(), remark.translated(french), List.of()))
                .isEmpty();
        assertThat(found(new LanguageRule(), remark.translated(french.older(true)), List.of()))
                .hasSize(3)
                .first()
                .asString()
                .startsWith("WARNING translation-older remarks[0].otherLanguage.older: the French of the remark"
                        + " \"hello\" is older than the text");
        assertThat(found(
                        new LanguageRule(),
                        remark.translated(new Translation("fr", "Bonjour \u00e0 vous.", null)),
                        List.of()))
                .hasSize(3)
                .allMatch(f -> f.startsWith("NOTE translation-not-short"));
    }
}
