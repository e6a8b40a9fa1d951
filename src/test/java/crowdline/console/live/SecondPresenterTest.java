package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.row.LiveMoment;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.state.LiveState;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.show.Interpreting;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.Translation;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.Interpreted;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.pace.Voices;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SecondPresenterTest {
    private static final List<Remark> REMARKS = SmallShow.show().acts().get(0).figures().stream()
            .map(Figure::remarks)
            .flatMap(List::stream)
            .toList();

    private static Placed placed(int remark, double startS) {
        Remark said = REMARKS.get(remark);
        return new Placed(said.id(), null, said.kind(), RemarkForm.FULL, startS, startS + 3, false);
    }

    private static SecondView at(double nowS, Plan plan, LiveState state) {
        LiveMoment moment = SmallShow.moment(nowS, plan, state);
        return SecondPresenter.of(moment, new LivePresenter(SmallShow.words()).view(moment), SmallShow.words(), null);
    }

    @Test
    void whatIsSaidAfterwardsIsToldWithHowLongUntilThen() {
        LiveState flying = SmallShow.after(new FlightEvent.ActStarted(100));
        Plan plan = new Plan(List.of(placed(0, 101), placed(1, 108)), List.of(), 0, 6, true);
        SecondView view = at(102, plan, flying);
        assertThat(String.join(" ", view.live().say().breaths()))
                .isEqualTo(REMARKS.get(0).text());
        assertThat(view.then()).isEqualTo("Then, in 6 s: " + REMARKS.get(1).text());
        assertThat(at(100.5, plan, flying).then())
                .as("what is on the screen and not begun is not what comes after it")
                .isEqualTo("Then, in 8 s: " + REMARKS.get(1).text());
        assertThat(at(102, Plan.EMPTY, flying).then()).isEmpty();
    }

    @Test
    void nothingIsOfferedThatOnlyAKeyCouldTake() {
        SecondView view = at(104, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100)));
        assertThat(view.live().next().facts()).isEmpty();
        assertThat(view.live().handles()).isEqualTo(Handles.NONE);
        assertThat(view.live().told()).isNull();
    }

    @Test
    void whoseTurnItIsIsAWordAndAShape() {
        FlightEvent.ActStarted started = new FlightEvent.ActStarted(100);
        assertThat(at(104, Plan.EMPTY, SmallShow.after(started)).turn().word()).isEqualTo("The commentator speaks");
        assertThat(at(104, Plan.EMPTY, SmallShow.after(started, new LiveEvent.HandedOver(101, true)))
                        .turn()
                        .word())
                .isEqualTo("You speak next");
        assertThat(at(104, Plan.EMPTY, SmallShow.after(started, new IncidentEvent.IncidentOpened(101)))
                        .turn()
                        .word())
                .isEqualTo("Incident: say nothing");
    }

    /** The first remark is whoever's sits at the console, the second the other's. */
    private static final Voices BENS_IS_THE_SECOND = new Voices() {
        @Override
        public SpokenTime time(String text) {
            return new SpokenTime(3, 3, 3);
        }

        @Override
        public Optional<String> other(Remark remark) {
            return remark.equals(REMARKS.get(1)) ? Optional.of("Ben") : Optional.empty();
        }
    };

    private static LiveView live(double nowS, Plan plan, LiveState state) {
        return new LivePresenter(words()).view(SmallShow.moment(nowS, plan, state));
    }

    private static ShowLookup words() {
        return new ShowLookup(
                SmallShow.show(), new Catalogue(List.of()), BENS_IS_THE_SECOND, (act, variant) -> ActSheet.NONE);
    }

    private static String turn(double nowS, Plan plan, LiveState state) {
        return SecondPresenter.of(SmallShow.moment(nowS, plan, state), live(nowS, plan, state), words(), null)
                .turn()
                .word();
    }

    @Test
    void thePlanHandsOverWhenTheNextRemarkIsTheOthers() {
        LiveState flying = SmallShow.after(new FlightEvent.ActStarted(100));
        Plan plan = new Plan(List.of(placed(0, 101), placed(1, 115), placed(2, 125)), List.of(), 0, 9, true);
        assertThat(turn(102, plan, flying)).isEqualTo("You speak next");
        assertThat(turn(113, plan, flying)).as("between the two").isEqualTo("You speak next");
        assertThat(turn(116, plan, flying)).isEqualTo("You speak now");
        assertThat(turn(126, plan, flying))
                .as("what is said is not the other's")
                .isEqualTo("The commentator speaks");
        assertThat(live(113, plan, flying).say().caption()).isEqualTo("Ben: Say in 2 s");
        assertThat(live(116, plan, flying).say().caption()).isEqualTo("Ben: Say now");
        assertThat(live(102, plan, flying).say().caption()).isEqualTo("Say now");
    }

    @Test
    void theKeyOverrulesThePlan() {
        Plan plan = new Plan(List.of(placed(0, 101), placed(1, 108)), List.of(), 0, 6, true);
        LiveState flying = SmallShow.after(new FlightEvent.ActStarted(100));
        assertThat(live(109, plan, flying).handles().othersTurn()).isTrue();
        LiveState taken = SmallShow.after(new FlightEvent.ActStarted(100), new LiveEvent.HandedOver(101, false));
        assertThat(turn(109, plan, taken)).isEqualTo("The commentator speaks");
        assertThat(live(109, plan, taken).say().caption())
                .as("and nobody else is named")
                .isEqualTo("Say now");
        assertThat(live(109, plan, taken).handles().othersTurn()).isFalse();
    }

    private static final Translation FRENCH = new Translation("fr", "Quatre fois son poids.", "Claire");

    /** The first remark is also said in French by Claire, in two seconds; everything else is the console's. */
    private record InFrench(Interpreting interpreting, Translation words) implements Voices {
        @Override
        public SpokenTime time(String text) {
            return new SpokenTime(3, 3, 3);
        }

        @Override
        public Optional<Interpreted> interpreted(Remark remark, boolean shortForm) {
            return remark.equals(REMARKS.get(0))
                    ? Optional.of(new Interpreted("Claire", words, shortForm, new SpokenTime(2, 2, 2)))
                    : Optional.empty();
        }
    }

    private static SecondView french(double nowS, Interpreting when, @Nullable String reader) {
        return french(nowS, when, reader, FRENCH);
    }

    private static SecondView french(double nowS, Interpreting when, @Nullable String reader, Translation said) {
        Show show = SmallShow.show()
                .withSpeakers(new Speakers(List.of(new Speaker("Ann", false), new Speaker("Claire", false)), when));
        ShowLookup words = new ShowLookup(
                show, new Catalogue(List.of()), new InFrench(when, said), (act, variant) -> ActSheet.NONE);
        Plan plan = new Plan(List.of(placed(0, 101, 5.5), placed(1, 115, 3)), List.of(), 0, 9, true);
        LiveMoment moment = SmallShow.moment(nowS, plan, SmallShow.after(new FlightEvent.ActStarted(95)));
        return SecondPresenter.of(moment, new LivePresenter(words).view(moment), words, reader);
    }

    private static Placed placed(int remark, double startS, double lastsS) {
        Remark said = REMARKS.get(remark);
        return new Placed(said.id(), null, said.kind(), RemarkForm.FULL, startS, startS + lastsS, false);
    }

    @Test
    void theInterpreterReadsTheOtherLanguageLargeAndSpeaksInThePauseAfter() {
        SecondView before = french(98, Interpreting.AFTER, "Claire");
        assertThat(before.turn().word()).isEqualTo("Claire, you speak next");
        assertThat(before.live().say().breaths()).containsExactly("Quatre fois son poids.");
        assertThat(before.live().say().caption()).isEqualTo("Say next, in French");
        assertThat(french(102, Interpreting.AFTER, "Claire").turn().word())
                .as("the remark itself takes three seconds")
                .isEqualTo("Claire, you speak next");
        SecondView now = french(105, Interpreting.AFTER, "Claire");
        assertThat(now.turn().word()).isEqualTo("Claire, you speak now");
        assertThat(now.live().say().caption()).isEqualTo("Say now, in French");
        assertThat(now.live().say().saidShare()).isBetween(0.2, 0.8);
        assertThat(now.speakers()).containsExactly("Ann", "Claire");
    }

    @Test
    void wordsThatAreOlderThanTheTextSaySoWhereTheyAreRead() {
        SecondView now = french(105, Interpreting.AFTER, "Claire", FRENCH.older(true));
        assertThat(now.live().say().kind()).isEqualTo("2 s to say, older than the text");
        assertThat(french(105, Interpreting.AFTER, "Claire").live().say().kind())
                .isEqualTo("2 s to say");
        assertThat(french(90, Interpreting.AFTER, "Ann", FRENCH.older(true))
                        .live()
                        .say()
                        .kind())
                .doesNotContain("older");
    }

    @Test
    void besideTheInterpreterSpeaksAsTheRemarkBegins() {
        assertThat(french(101.5, Interpreting.BESIDE, "Claire").turn().word()).isEqualTo("Claire, you speak now");
        assertThat(french(98, Interpreting.BESIDE, "Claire").turn().word()).isEqualTo("Claire, you speak next");
    }

    @Test
    void othersReadTheRemarkItselfAndLiveOnlyTellsTheTime() {
        for (String reader : new String[] {null, "Ann", "somebody of another show"}) {
            SecondView view = french(105, Interpreting.AFTER, reader);
            assertThat(String.join(" ", view.live().say().breaths()))
                    .isEqualTo(REMARKS.get(0).text());
            assertThat(view.turn().word()).isEqualTo("The commentator speaks");
            assertThat(view.live().say().kind()).endsWith(", then French 2 s");
        }
        assertThat(french(105, Interpreting.BESIDE, null).live().say().kind()).endsWith(", with French");
    }
}
