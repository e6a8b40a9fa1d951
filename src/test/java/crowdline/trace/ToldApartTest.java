package crowdline.trace;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.body.Vec;
import crowdline.storage.show.CatalogueFile;
import crowdline.trace.Found.Guess;
import org.junit.jupiter.api.Test;

/** What is told from a way, from another on nearly the same path, and from a landing. */
class ToldApartTest {
    private final FlightFigures figures =
            new FlightFigures(CatalogueFile.shipped(), FlightFiguresTest.trial("light aerobatic biplane"));

    /** As far to one side as to the other, right after a figure. */
    @Test
    void derryTurnIsAFigureWithoutALineAboutItToo() {
        assertThat(FlightFiguresTest.firsts(figures, swaying(60)))
                .containsExactly("loop", "Derry turn", "loop", "loop");
    }

    /** Less far to both sides; or across the line that loops are flown along; and a dive for speed. */
    @Test
    void wayThatSwaysOrDivesIsNoFigure() {
        assertThat(FlightFiguresTest.firsts(figures, swaying(40))).containsExactly("loop", "loop", "loop");
        Log across = new Log()
                .line(8)
                .figure("loop", 125)
                .line(8)
                .figure("loop", 125)
                .line(8);
        turn(across, 90, 45);
        assertThat(FlightFiguresTest.firsts(
                        figures, turn(turn(across.line(1), 60, 72), -60, 72).line(3)))
                .containsExactly("loop", "loop");
        assertThat(FlightFiguresTest.firsts(
                        figures,
                        new Log()
                                .line(8)
                                .figure("loop", 125)
                                .line(1)
                                .figure("dive", 80)
                                .line(1)
                                .figure("loop", 125)
                                .line(8)))
                .containsExactly("loop", "loop");
    }

    /** So far to one side and back, degrees. */
    private static Log swaying(double deg) {
        Log log = new Log().line(8).figure("loop", 125).line(2);
        turn(turn(log, deg, 72), -deg, 72);
        return log.line(8).figure("loop", 125).line(8).figure("loop", 125).line(8);
    }

    /** A level turn, to the left above 0, with some bank. */
    private static Log turn(Log log, double deg, double bankDeg) {
        double radPerS = Math.signum(deg) * 9.81 * Math.tan(Math.toRadians(bankDeg)) / 60;
        for (double t = 0; t < Math.abs(Math.toRadians(deg) / radPerS); t += 0.2) {
            double turned = 0.2 * radPerS;
            log.way = new Vec(
                    log.way.x() * Math.cos(turned) - log.way.y() * Math.sin(turned),
                    log.way.y() * Math.cos(turned) + log.way.x() * Math.sin(turned),
                    0);
            log.line(0.2);
        }
        return log;
    }

    /** It bends less there, and a loop as much as elsewhere. */
    @Test
    void whatIsFlownOnTopOfALoopShows() {
        Log log = new Log().line(8).figure("avalanche", 125).line(8);
        assertThat(figures.in(log.readings).get(0).guesses())
                .extracting(Guess::name)
                .first()
                .isEqualTo("avalanche");
    }

    /** A receiver that says for a minute that it does not move, where nobody lands. */
    @Test
    void whoIsHighHasNotLanded() {
        Log log = new Log().line(8);
        log.at = log.at.plus(new Vec(0, 0, 400));
        log.line(8).figure("loop", 125).line(8);
        for (int i = 0; i < 300; i++) {
            log.read(log.at);
        }
        assertThat(figures.flights(log.line(8).figure("half Cuban", 125).line(8).readings))
                .hasSize(1);
    }
}
