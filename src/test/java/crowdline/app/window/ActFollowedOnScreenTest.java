package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.flight.body.Vec;
import crowdline.loaded.FlownLog;
import crowdline.running.FlownAct;
import crowdline.running.FlownAct.Began;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Whole acts in a real window, moved by the clock and by an aircraft through the receiver's path, and read off the screen. */
@Tag("window")
@Timeout(300)
class ActFollowedOnScreenTest {
    private static final Path FENMARSH = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    /** A minute before the first act's slot, 14:30 in British summer time. */
    private static final Instant BEFORE_FENMARSH = Instant.parse("2027-06-12T13:29:00Z");

    /** A minute before the second one's, 14:50. */
    private static final Instant BEFORE_THE_GLIDER = Instant.parse("2027-06-12T13:49:00Z");

    /** When the slot begins on the screen's clock. */
    private static final double SLOT_S = 60;
    /** A step of the aircraft is on the screen after so long, seconds: what the follower needs, and a second between looks. */
    private static final double FOLLOWED_S = 3;

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    @Test
    void actFlownByTheClockNeedsOneKey() throws Exception {
        ActOnPaper paper = ActOnPaper.of(FENMARSH).get(0);
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE_FENMARSH)) {
            screen.press("C");
            screen.at(SLOT_S);
            screen.press("SPACE");
            assertThat(screen.strip().source().word()).isEqualTo("Clock");
            for (int i = 0; i < paper.size(); i++) {
                screen.at(SLOT_S + paper.startS(i) + 0.5);
                assertThat(screen.now().name()).isEqualTo(paper.name(i));
                screen.at(SLOT_S + paper.startS(i) + paper.lastsS(i) - 0.5);
                assertThat(screen.now().name()).isEqualTo(paper.name(i));
                assertThat(screen.now().left()).isEqualTo("0.5 s");
                assertThat(screen.strip().drift().word()).isEqualTo("On time");
            }
            screen.at(SLOT_S + paper.flight.totalS() + 5);
            assertThat(screen.now().left()).isEqualTo("5 s over");
            screen.press("E");
            assertThat(screen.now().caption()).isEqualTo("After the act");
        }
    }

    @Test
    void aircraftFliesTheActWithoutAKey() throws Exception {
        ActOnPaper paper = ActOnPaper.of(FENMARSH).get(0);
        FlownAct flown = new FlownAct(paper.flight, 21);
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE_FENMARSH)) {
            Followed followed = new Followed(screen, paper, flown);
            assertThat(screen.now().look()).contains("The aircraft begins it");
            for (int i = 0; i < paper.size(); i++) {
                followed.figure(i);
            }
            assertThat(followed.late)
                    .as("figures not on the screen within " + FOLLOWED_S + " s")
                    .hasSizeLessThan(4);
            screen.press("E");
            assertThat(screen.now().caption()).isEqualTo("After the act");
        }
    }

    @Test
    void aircraftLeavesAFigureOut() throws Exception {
        ActOnPaper paper = ActOnPaper.of(FENMARSH).get(1);
        int dropped = paper.indexOf("glider-slow-roll");
        FlownAct flown = new FlownAct(paper.without("glider-slow-roll").flight, 22);
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE_THE_GLIDER)) {
            screen.press("N");
            Followed followed = new Followed(screen, paper, flown);
            for (int i = 0; i < dropped - 1; i++) {
                followed.figure(i);
                assertThat(screen.next().name()).isEqualTo(paper.name(i + 1));
            }
            for (int i = dropped - 1; i < flown.begun().size(); i++) {
                followed.figure(i);
            }
            assertThat(followed.late).hasSizeLessThan(4);
        }
    }

    /** To and fro across the display line, up and down: no figure and no way does that. */
    @Test
    void aircraftFliesWhatIsInNoPlan() throws Exception {
        ActOnPaper paper = ActOnPaper.of(FENMARSH).get(0);
        FlownAct flown = new FlownAct(paper.flight, 24);
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE_FENMARSH)) {
            Followed followed = new Followed(screen, paper, flown);
            for (int i = 0; i < 4; i++) {
                followed.figure(i);
            }
            followed.fly(flown.begun().get(4).atS());
            followed.swing(20);
            assertThat(screen.now().name()).isEqualTo("Off plan");
            assertThat(screen.now().look()).contains("It goes on by itself when the plan does");
            assertThat(screen.strip().source().word()).isEqualTo("Aircraft");
        }
    }

    @Test
    void clockCarriesOnWhileTheReceiverIsSilent() throws Exception {
        ActOnPaper paper = ActOnPaper.of(FENMARSH).get(1);
        FlownAct flown = new FlownAct(paper.flight, 23);
        double goneS = flown.begun().get(2).atS() - 5;
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE_THE_GLIDER)) {
            screen.press("N");
            Followed followed = new Followed(screen, paper, flown);
            followed.heard = t -> t < goneS || t >= goneS + 20;
            followed.figure(0);
            followed.fly(goneS - 1);
            assertThat(screen.now().name()).isEqualTo(paper.name(1));
            followed.fly(goneS + 6);
            assertThat(Objects.requireNonNull(screen.now().state()).word())
                    .isEqualTo("No position: the clock carries on");
            assertThat(screen.strip().source().word()).isEqualTo("Clock");
            followed.fly(goneS + 10);
            assertThat(screen.now().name()).as("the clock moved on").isEqualTo(paper.name(2));
            assertThat(Objects.requireNonNull(screen.strip().reading()).word()).isEqualTo("10 s old");
            followed.fly(goneS + 27);
            assertThat(screen.now().state()).isNull();
            assertThat(screen.strip().source().word()).isEqualTo("Aircraft");
            for (int i = 4; i < paper.size(); i++) {
                followed.figure(i);
            }
        }
    }

    /** An act that the aircraft leads. */
    private static final class Followed {
        private static final double FIRST_S = 20;

        final ConsoleOnScreen screen;
        final ActOnPaper paper;
        final FlownAct flown;
        final double beginS;
        final List<String> late = new ArrayList<>();
        DoublePredicate heard = t -> true;
        double toS = -FlownAct.BEFORE_S;

        Followed(ConsoleOnScreen screen, ActOnPaper paper, FlownAct flown) throws Exception {
            this.screen = screen;
            this.paper = paper;
            this.flown = flown;
            beginS = screen.nowS() + FlownAct.BEFORE_S + 1;
            screen.plugIn();
            screen.press("A");
            fly(-2);
        }

        void fly(double untilS) throws Exception {
            for (double t = toS; t <= untilS; t += FlownAct.STEP_S) {
                if (heard.test(t)) {
                    screen.send(beginS + t, flown.heard(t, paper.show.venue()));
                }
                toS = t + FlownAct.STEP_S;
            }
            screen.at(beginS + untilS);
        }

        void swing(double lastsS) throws Exception {
            double fromS = toS;
            for (double t = 0; t <= lastsS; t += FlownAct.STEP_S) {
                Vec at = new Vec(0, 250 * Math.sin(0.35 * t), 250 + 60 * Math.sin(0.7 * t));
                double awayMps = 250 * 0.35 * Math.cos(0.35 * t);
                screen.send(
                        beginS + fromS + t,
                        FlownLog.instant(paper.show.venue(), FlownAct.BEFORE_S + fromS + t, at, 0, awayMps));
            }
            toS = fromS + lastsS;
            screen.at(beginS + toS);
        }

        void figure(int index) throws Exception {
            Began began = flown.begun().get(index);
            double endS = index + 1 < flown.begun().size()
                    ? flown.begun().get(index + 1).atS()
                    : flown.endS();
            // A start from the ground is sure only once it climbs.
            double seenS = Math.min(index == 0 ? FIRST_S : FOLLOWED_S, (endS - began.atS()) * 0.6);
            fly(began.atS() + seenS);
            if (!screen.now().name().equals(began.name())) {
                late.add(began.name() + " at " + began.atS() + ": "
                        + screen.now().name());
            }
            fly(Math.max(toS, began.atS() + (endS - began.atS()) * 0.75));
            assertThat(screen.now().name())
                    .as("flown " + (screen.nowS() - beginS))
                    .isEqualTo(began.name());
            assertThat(screen.strip().source().word()).isEqualTo("Aircraft");
        }
    }
}
