package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.live.next.NextView.FactView;
import crowdline.console.live.say.SayView;
import crowdline.live.state.Note;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole acts in a real window, stepped by keys and read off the screen. What must stand there follows from the show file and the prediction. */
@Tag("window")
@Timeout(300)
class ActByHandOnScreenTest {
    private static final Path FENMARSH = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Path WRACKENHOLT = Path.of("src/test/resources/crowdline/shows/wrackenholt-evening.json");
    /** A minute before the first act's slot, 14:30 in British summer time. */
    private static final Instant BEFORE_FENMARSH = Instant.parse("2027-06-12T13:29:00Z");

    private static final Instant BEFORE_WRACKENHOLT = Instant.parse("2027-06-19T19:39:00Z");
    /** When the slot begins on the screen's clock. */
    private static final double SLOT_S = 60;

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    @Test
    void spaceBeginsTheActThatIsCountedDownTo() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE_FENMARSH)) {
            assertThat(screen.now().name()).isEqualTo("On in 1:00");
            assertThat(screen.now().look()).contains("Quillan Tarrowby", "Sedgeby Jackanapes");
            assertThat(screen.strip().timeInAct()).isEqualTo("not begun");
            screen.at(53);
            assertThat(screen.now().name()).isEqualTo("On in 7 s");
            assertThat(screen.strip().hour()).isEqualTo("14:29:53");
            screen.at(61);
            screen.press("SPACE");
            screen.at(64);
            assertThat(screen.now().name()).isEqualTo("take-off and climb away");
            assertThat(screen.strip().timeInAct()).isEqualTo("0:03, slot 12:00");
        }
    }

    @Test
    void actIsWalkedByHand() throws Exception {
        ActOnPaper paper = ActOnPaper.of(FENMARSH).get(0);
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE_FENMARSH)) {
            Walked walked = new Walked(screen, paper);
            for (int i = 0; i < 6; i++) {
                walked.stepTo(i);
                if (i == 0) {
                    talk(screen, paper);
                }
            }
            holdAndDrop(walked);
            swapAndLeaveThePlan(walked);
            for (int i = walked.index + 1; i < paper.size(); i++) {
                walked.stepTo(i);
            }
            screen.at(SLOT_S + walked.lateS + paper.flight.totalS());
            screen.press("SPACE");
            assertThat(screen.now().caption()).isEqualTo("After the act");
            assertThat(Objects.requireNonNull(screen.now().state()).word()).isEqualTo("Act over");
            assertThat(screen.now().name()).contains("Hettie Pellingdyke and the Larkmere Thistledown");
            assertThat(screen.now().look()).contains("14:50", "N ");
            assertThat(screen.next().name()).contains("Hettie Pellingdyke");
            double flownS = paper.flight.totalS() + walked.lateS;
            assertThat(screen.strip().timeInAct()).isEqualTo(clock(flownS) + " flown");
            screen.press("N");
            assertThat(screen.now().name()).isEqualTo("On in " + ActOnPaper.whole(21 * 60 - screen.nowS()));
            assertThat(screen.next().name())
                    .isEqualTo(ActOnPaper.of(FENMARSH).get(1).name(0));
        }
    }

    /** In the long first figure: a filler, a fact, what is said and what is not. */
    private static void talk(ConsoleOnScreen screen, ActOnPaper paper) throws Exception {
        screen.at(SLOT_S + 20);
        screen.press("F");
        assertThat(words(screen.say())).isIn(paper.texts(0, RemarkKind.FILLER));
        assertThat(screen.say().kind()).isEqualTo("Filler");
        String filler = words(screen.say());
        screen.at(SLOT_S + 23);
        assertThat(words(screen.say())).as("while it is spoken").isEqualTo(filler);
        screen.press("S");
        assertThat(words(screen.say())).isNotEqualTo(filler);
        List<FactView> facts = screen.next().facts();
        assertThat(facts).extracting(FactView::key).containsExactly(1, 2, 3);
        assertThat(paper.texts(0, RemarkKind.FACT))
                .containsAll(facts.stream().map(f -> f.full().text()).toList());
        screen.press("1");
        assertThat(words(screen.say())).isEqualTo(facts.get(0).full().text());
        screen.at(SLOT_S + 25);
        screen.press("S");
        assertThat(screen.next().facts())
                .as("a fact that was said is not offered again")
                .extracting(f -> f.full().text())
                .doesNotContain(facts.get(0).full().text());
        screen.at(SLOT_S + 45);
        String waiting = words(screen.say());
        screen.press("X");
        assertThat(words(screen.say())).as("what is left out").isNotEqualTo(waiting);
        screen.at(SLOT_S + 50);
        assertThat(words(screen.say())).isNotEqualTo(waiting);
    }

    private static void holdAndDrop(Walked walked) throws Exception {
        ConsoleOnScreen screen = walked.screen;
        ActOnPaper paper = walked.paper;
        walked.lateS = 5;
        screen.at(walked.startS(6));
        assertThat(screen.now().left()).isEqualTo("5 s over");
        assertThat(screen.strip().drift().word()).isEqualTo("5 s late");
        walked.stepTo(6);
        screen.press("F12");
        assertThat(screen.shows("Incident page")).isTrue();
        assertThat(screen.shows("Flying now")).isFalse();
        screen.press("BACK_SPACE");
        for (String letter : List.of("R", "E", "S", "U", "M", "E")) {
            assertThat(screen.shows("Incident page")).as("before " + letter).isTrue();
            screen.press(letter);
        }
        assertThat(screen.shows("Incident page")).isFalse();
        assertThat(screen.now().left()).as("everything stopped").isEqualTo("held");
        screen.press("H");
        walked.flying(6, 1);
        walked.stepTo(7);
        screen.at(walked.startS(7) + 8);
        screen.press("H");
        screen.at(walked.startS(7) + 18);
        assertThat(Objects.requireNonNull(screen.now().state()).word()).isEqualTo("On hold: press H to carry on");
        assertThat(screen.now().left()).isEqualTo("held");
        assertThat(screen.strip().drift().word()).isEqualTo("On hold 10 s");
        screen.press("H");
        assertThat(screen.now().left()).isEqualTo(ActOnPaper.left(paper.lastsS(7) - 8));
        note(screen, paper);
        walked.lateS += 10;
        walked.stepTo(8);
        screen.press("D");
        assertThat(screen.next().name()).isEqualTo(paper.name(10));
        screen.press("Z");
        assertThat(screen.next().name()).isEqualTo(paper.name(9));
        assertThat(screen.spoken("What the key did")).contains("Took back", paper.name(9));
        screen.press("D");
        walked.lateS -= paper.lastsS(9);
        walked.stepTo(10);
    }

    /** Noted at once; the keys belong to its words until Enter, and the act goes on. */
    private static void note(ConsoleOnScreen screen, ActOnPaper paper) throws Exception {
        screen.press("J");
        for (String letter : List.of("S", "M", "O", "SPACE", "D", "E")) {
            screen.press(letter);
        }
        assertThat(screen.now().name()).as("Space and D were letters").isEqualTo(paper.name(7));
        screen.press("ENTER");
        assertThat(screen.notes()).extracting(Note::text).containsExactly("smo de");
        assertThat(screen.notes().get(0).figureId()).isEqualTo(paper.id(7));
        screen.press("J");
        screen.press("ESCAPE");
        assertThat(screen.notes()).extracting(Note::text).containsExactly("smo de", "");
        screen.press("Z");
        assertThat(screen.notes()).hasSize(1);
        assertThat(screen.now().name()).as("Z took the note back").isEqualTo(paper.name(7));
    }

    private static void swapAndLeaveThePlan(Walked walked) throws Exception {
        ConsoleOnScreen screen = walked.screen;
        ActOnPaper paper = walked.paper;
        screen.press("W");
        assertThat(screen.next().name()).isEqualTo(paper.name(12));
        assertThat(Objects.requireNonNull(screen.next().swapped()).word()).isEqualTo("Swapped with " + paper.name(11));
        screen.press("W");
        assertThat(screen.next().name()).isEqualTo(paper.name(11));
        assertThat(screen.next().swapped()).isNull();
        walked.stepTo(11);
        walked.stepTo(12);
        screen.at(walked.startS(12) + 5);
        screen.press("O");
        screen.at(walked.startS(12) + 18);
        assertThat(screen.now().name()).isEqualTo("Off plan");
        assertThat(screen.next().name()).isEqualTo(paper.name(13));
        walked.lateS = screen.nowS() - SLOT_S - paper.startS(13);
        walked.stepTo(13);
        screen.at(walked.startS(13) + 6);
        screen.press("SPACE");
        assertThat(screen.now().name()).isEqualTo(paper.name(14));
        screen.at(walked.startS(13) + 7);
        screen.press("BACK_SPACE");
        walked.flying(13, 7);
    }

    /** An act stepped by hand, so late against the prediction. */
    private static final class Walked {
        final ConsoleOnScreen screen;
        final ActOnPaper paper;
        double lateS;
        int index = -1;

        Walked(ConsoleOnScreen screen, ActOnPaper paper) {
            this.screen = screen;
            this.paper = paper;
        }

        double startS(int figure) {
            return SLOT_S + lateS + paper.startS(figure);
        }

        /** Hears the call of a figure, begins it and looks at the screen. */
        void stepTo(int figure) throws Exception {
            Remark call = paper.call(figure).orElse(null);
            if (call != null && index >= 0 && screen.nowS() < startS(figure) - 8) {
                double takesS = screen.loaded().words().time(call, false).seconds();
                screen.at(startS(figure) - 1.5 - takesS / 2);
                assertThat(words(screen.say()))
                        .as("before " + paper.name(figure))
                        .isEqualTo(call.text());
                assertThat(screen.say().caption()).isEqualTo("Say now");
                assertThat(screen.next().call()).isEqualTo(call.text());
            }
            screen.at(startS(figure));
            screen.press("SPACE");
            index = figure;
            screen.at(startS(figure) + 1);
            flying(figure, 1);
            assertThat(screen.strip().drift().word()).as(paper.name(figure)).isEqualTo(ActOnPaper.late(lateS));
            assertThat(screen.strip().timeInAct()).isEqualTo(clock(screen.nowS() - SLOT_S) + ", slot 12:00");
            for (Quiet quiet : paper.quiets(figure)) {
                double toS = Objects.requireNonNull(quiet.toS());
                screen.at(startS(figure) + quiet.fromS() + 1);
                assertThat(screen.say().what())
                        .as("quiet in " + paper.name(figure))
                        .isEqualTo(SayView.What.LISTEN);
                assertThat(screen.say().kind()).isEqualTo(quiet.why());
                screen.at(startS(figure) + toS + 0.3);
                assertThat(screen.say().what()).isNotEqualTo(SayView.What.LISTEN);
            }
        }

        void flying(int figure, double forS) throws Exception {
            assertThat(screen.now().caption()).isEqualTo("Flying now · Variant: full");
            assertThat(screen.now().name()).isEqualTo(paper.name(figure));
            assertThat(screen.now().left())
                    .as(paper.name(figure))
                    .isEqualTo(ActOnPaper.left(paper.lastsS(figure) - forS));
            if (figure + 1 < paper.size()) {
                assertThat(screen.next().name()).isEqualTo(paper.name(figure + 1));
                assertThat(screen.next().in()).isEqualTo(ActOnPaper.whole(paper.lastsS(figure) - forS));
            }
        }
    }

    @Test
    void theIncidentPageComesInEveryStateOfTheShowAndEachIsThereAgain() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE_FENMARSH)) {
            callAndLeave(screen, "waiting");
            screen.at(61);
            screen.press("SPACE");
            screen.press("C");
            screen.at(64);
            callAndLeave(screen, "flying, by the clock");
            callAndLeave(screen, "held");
            screen.press("H");
            screen.press("A");
            screen.at(70);
            callAndLeave(screen, "by the aircraft, without a position");
            screen.press("H");
            screen.press("O");
            callAndLeave(screen, "off the plan");
            screen.press("O");
            screen.press("E");
            callAndLeave(screen, "act over");
            for (String place : List.of("F2", "F3", "F4", "F6", "F7")) {
                screen.press(place);
                callAndLeave(screen, place);
            }
        }
    }

    /** What stands there afterwards is what stood there before, unless a flying figure is now held. */
    private static void callAndLeave(ConsoleOnScreen screen, String state) throws Exception {
        boolean live = screen.shows("Flying now");
        String before = live ? screen.now().caption() + screen.now().name() : "";
        screen.press("F12");
        assertThat(screen.shows("Incident page")).as(state).isTrue();
        assertThat(screen.shows("Flying now")).as(state).isFalse();
        for (String letter : List.of("R", "E", "S", "U", "M", "E")) {
            screen.press(letter);
        }
        assertThat(screen.shows("Incident page")).as(state).isFalse();
        assertThat(screen.shows("Flying now")).as("back to Live: " + state).isTrue();
        if (live) {
            assertThat(screen.now().caption() + screen.now().name()).as(state).isEqualTo(before);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {-2000, -197, 197, 2000})
    void aShowOfAnotherDayIsRehearsedAllTheSame(int daysLater) throws Exception {
        Instant day = BEFORE_FENMARSH.plus(Duration.ofDays(daysLater));
        ActOnPaper paper = ActOnPaper.of(FENMARSH).get(0);
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, day)) {
            screen.at(1);
            assertThat(Objects.requireNonNull(screen.now().state()).word()).isEqualTo("Not today");
            assertThat(screen.now().look()).contains("Quillan Tarrowby", "Today is ");
            screen.press("F");
            screen.at(2);
            assertThat(screen.say().caption()).isEqualTo("Saying");
            screen.press("SPACE");
            for (int i = 0; i < 3; i++) {
                screen.jump(3 + paper.startS(i));
                if (i > 0) {
                    screen.press("SPACE");
                }
                assertThat(screen.now().name()).isEqualTo(paper.name(i));
            }
            screen.at(5 + paper.startS(2));
            assertThat(screen.say().bars()).as("words are planned").isNotNull();
        }
    }

    @Test
    void everyActOfBothDemosIsSteppedThroughByHand() throws Exception {
        walkAll(FENMARSH, BEFORE_FENMARSH);
        walkAll(WRACKENHOLT, BEFORE_WRACKENHOLT);
    }

    private void walkAll(Path file, Instant before) throws Exception {
        Path own = java.nio.file.Files.createDirectory(folder.resolve(String.valueOf(file.getFileName()) + "-files"));
        try (ConsoleOnScreen screen = new ConsoleOnScreen(own, file, before)) {
            double atS = SLOT_S;
            for (ActOnPaper paper : ActOnPaper.of(file)) {
                for (int i = 0; i < paper.size(); i++) {
                    screen.jump(atS + paper.startS(i));
                    screen.press("SPACE");
                    assertThat(screen.now().name()).isEqualTo(paper.name(i));
                    assertThat(screen.spoken("Messages")).as("no refusal").startsWith(". F1");
                }
                atS += paper.flight.totalS();
                screen.jump(atS);
                screen.press("SPACE");
                assertThat(screen.now().caption()).isEqualTo("After the act");
                screen.press("N");
            }
        }
    }

    private static String words(SayView say) {
        return String.join(" ", say.breaths());
    }

    private static String clock(double seconds) {
        long s = (long) Math.floor(seconds + 1e-6);
        return s / 60 + ":" + String.format(java.util.Locale.ROOT, "%02d", s % 60);
    }
}
