package crowdline.speech.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.HarbourDay;
import crowdline.show.Interpreting;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PacedVoicesTest {
    private static final Remark REMARK = new Remark(
            "r",
            RemarkKind.FACT,
            "Four times her weight, all in her arms.",
            "Four times her weight.",
            null,
            null,
            1,
            false);

    /** A letter takes as many tenths of a second as is said, and nothing else takes time. */
    private static Pace pace(String name, double tenths) {
        return new Pace(name, 0, tenths / 10, 0, 0, 0.1);
    }

    private static final Pace ANN = pace("Ann", 1);
    private static final Pace BEN = pace("Ben", 3);
    private static final Paces AT_ANNS = new Paces(ANN, List.of(ANN, BEN));

    private static Voices voices(Paces paces, Speaker... speakers) {
        return new PacedVoices(show(speakers), paces);
    }

    private static Show show(Speaker... speakers) {
        return HarbourDay.of(List.of()).withSpeakers(new Speakers(List.of(speakers)));
    }

    private static Voices both(Paces paces) {
        return voices(paces, new Speaker("Ann", false), new Speaker("Ben", false));
    }

    private static Remark by(@Nullable String speaker) {
        return REMARK.saidBy(speaker);
    }

    private static double seconds(Voices voices, @Nullable String speaker, boolean shortForm) {
        return voices.time(by(speaker), shortForm).seconds();
    }

    @Test
    void aRemarkTakesWhoeverSaysIt() {
        Voices voices = both(AT_ANNS);
        double annS = seconds(voices, null, false);
        assertThat(seconds(voices, "Ann", false)).isEqualTo(annS);
        assertThat(seconds(voices, "Ben", false)).isCloseTo(3 * annS, within(1e-9));
        assertThat(seconds(voices, "Ben", true)).isCloseTo(3 * seconds(voices, null, true), within(1e-9));
        assertThat(voices.other(by("Ben"))).contains("Ben");
        assertThat(voices.other(by("Ann"))).as("who sits at the console").isEmpty();
        assertThat(voices.other(by(null))).isEmpty();
    }

    /** The second speaker has sat down at the console, and the first has become the other. */
    @Test
    void whoseTimesAreChosenSitsAtTheConsole() {
        Voices voices = both(new Paces(BEN, List.of(ANN, BEN)));
        assertThat(voices.other(by("Ben"))).isEmpty();
        assertThat(voices.other(by("Ann"))).contains("Ann");
        assertThat(seconds(voices, "Ann", false) * 3).isCloseTo(seconds(voices, "Ben", false), within(1e-9));
        assertThat(seconds(voices, null, false)).isEqualTo(seconds(voices, "Ben", false));
    }

    @Test
    void whatIsSomebodysWhoIsAwayOrUnknownIsSaidAtTheConsole() {
        Voices voices = voices(AT_ANNS, new Speaker("Ann", false), new Speaker("Ben", true));
        for (String speaker : List.of("Ben", "Cleo")) {
            assertThat(voices.other(by(speaker))).isEmpty();
            assertThat(seconds(voices, speaker, false)).isEqualTo(seconds(voices, null, false));
        }
    }

    /** With nobody chosen, as on a machine where nobody was timed, the first speaker sits at the console. */
    @Test
    void aSpeakerWhomNobodyTimedTakesTheUsualTime() {
        Voices voices = both(Paces.DEFAULT);
        assertThat(voices.other(by("Ben"))).contains("Ben");
        assertThat(voices.other(by("Ann"))).isEmpty();
        assertThat(voices.time(by("Ben"), false)).isEqualTo(voices.time(by(null), false));
    }

    /** The same name from another keyboard: an accent of its own, capitals, space around it. */
    @Test
    void aNameIsTheSameHoweverItIsTyped() {
        Voices voices = voices(
                new Paces(ANN, List.of(pace("Ren\u00e9e", 3))),
                new Speaker("Ann", false),
                new Speaker("Rene\u0301e", false));
        assertThat(voices.other(by(" REN\u00c9E"))).isPresent();
        assertThat(seconds(voices, "ren\u00e9e", false)).isCloseTo(3 * seconds(voices, null, false), within(1e-9));
    }

    private static Remark inFrench(@Nullable String speaker) {
        return REMARK.translated(new Translation("fr", "Quatre fois son poids.", speaker));
    }

    private static final Translation FRENCH = new Translation("fr", "Quatre fois son poids.", null);

    @Test
    void theOtherLanguageComesAfterABreathAtItsOwnSpeakersPace() {
        Voices voices = both(AT_ANNS);
        double annS = voices.time(REMARK, false).seconds();
        Interpreted bens = voices.interpreted(inFrench("Ben"), false).orElseThrow();
        assertThat(bens.speaker()).isEqualTo("Ben");
        assertThat(bens.time()).isEqualTo(BEN.time(FRENCH));
        SpokenTime all = voices.time(inFrench("Ben"), false);
        assertThat(all.seconds())
                .isCloseTo(annS + Voices.BREATH_S + BEN.time(FRENCH).seconds(), within(1e-9));
        assertThat(all.highS()).isGreaterThan(all.seconds());
        assertThat(voices.first(inFrench("Ben"), false).seconds()).isEqualTo(annS);
        assertThat(voices.other(inFrench("Ben")))
                .as("the remark stays at the console")
                .isEmpty();
        assertThat(voices.interpreted(inFrench(null), false).orElseThrow().time())
                .as("in two languages by one who knows both")
                .isEqualTo(ANN.time(FRENCH));
    }

    @Test
    void besideItTheLongerOfTheTwoCounts() {
        Show show = show(new Speaker("Ann", false), new Speaker("Ben", false));
        Voices beside = new PacedVoices(show.withSpeakers(show.speakers().with(Interpreting.BESIDE)), AT_ANNS);
        assertThat(beside.time(inFrench("Ben"), false).seconds())
                .isEqualTo(BEN.time(FRENCH).seconds());
        assertThat(beside.time(inFrench("Ann"), false).seconds())
                .as("French is shorter than the remark")
                .isEqualTo(beside.time(REMARK, false).seconds());
    }

    @Test
    void theShortFormHasItsOwnWordsOrElseAllOfThem() {
        Voices voices = both(AT_ANNS);
        Remark both = REMARK.translated(new Translation("fr", "Quatre fois son poids.", "Quatre fois.", "Ben", false));
        Interpreted said = voices.interpreted(both, true).orElseThrow();
        assertThat(said.text()).isEqualTo("Quatre fois.");
        assertThat(said.time()).isEqualTo(BEN.time(new Translation("fr", "Quatre fois.", null)));
        assertThat(said.note()).isEmpty();
        assertThat(voices.time(both, true).seconds())
                .isCloseTo(
                        voices.time(REMARK, true).seconds()
                                + Voices.BREATH_S
                                + said.time().seconds(),
                        within(1e-9));
        Interpreted all = voices.interpreted(inFrench("Ben"), true).orElseThrow();
        assertThat(all.text()).isEqualTo("Quatre fois son poids.");
        assertThat(all.note()).isEqualTo("all of it, as it has no short form");
        Remark alone = Remark.of("r", RemarkKind.FACT, "Four times.").translated(FRENCH.older(true));
        assertThat(voices.interpreted(alone, true).orElseThrow().note())
                .as("a remark without a short form is said whole itself")
                .isEqualTo("older than the text");
    }

    @Test
    void whoWasNeverTimedIsKnown() {
        Speakers all = new Speakers(List.of(new Speaker("Ann", false), new Speaker("Ben", false)));
        Speaker ann = all.all().get(0);
        Speaker ben = all.all().get(1);
        assertThat(AT_ANNS.isTimed(ben, all)).isTrue();
        assertThat(new Paces(ANN, List.of(ANN)).isTimed(ben, all)).isFalse();
        assertThat(Paces.DEFAULT.isTimed(ann, all)).isFalse();
        assertThat(new Paces(pace("Zed", 2), List.of()).isTimed(ann, all))
                .as("sits at the console, where Zed's pace was chosen")
                .isTrue();
    }

    @Test
    void nobodyWhoIsAwayOrUnknownInterprets() {
        Voices voices = voices(AT_ANNS, new Speaker("Ann", false), new Speaker("Ben", true));
        for (String speaker : List.of("Ben", "Cleo")) {
            assertThat(voices.interpreted(inFrench(speaker), false)).isEmpty();
            assertThat(voices.time(inFrench(speaker), false)).isEqualTo(voices.time(REMARK, false));
        }
    }
}
