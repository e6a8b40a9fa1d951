package crowdline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.LiveEvent;
import crowdline.loaded.LoadedShow;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Line;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A robot practises at each level, twice: looking at the sky, and reading the list. The score must tell the two apart. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PracticeRobotTest {
    private static final long SEED = 7;
    private static final double NEEDS_S = 1.5;

    private final LoadedShow show;

    PracticeRobotTest() throws ShowFileException {
        show = PracticeShows.loaded("wrackenholt-evening");
    }

    private PracticeScore score(PracticeFlight flight, List<LiveEvent> events) {
        return PracticeScore.of(flight, show.words(), events);
    }

    private static long lacks(PracticeScore score, About about) {
        return score.about(about).stream().filter(l -> !l.well()).count();
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void whoLooksAtTheSkyIsToldLittleAndWhoReadsTheListIsToldWhatBroke(Level level) throws CannotPractise {
        Act act = show.show().act("quickthorn-solo").orElseThrow();
        Variant variant = act.variants().get(0);
        PracticeFlight flight = new PracticePilot(show.show(), CatalogueFile.shipped()).fly(act, variant, level, SEED);

        PracticeScore looking = score(flight, Robot.looking(show, act, variant, flight, NEEDS_S));
        PracticeScore reading = score(flight, Robot.reading(show, act, variant, flight));

        assertThat(lacks(looking, About.PLAN)).isZero();
        assertThat(looking.about(About.STEPS))
                .containsExactly(
                        new Line(About.STEPS, true, "You were in step with every figure, within 3 s of its start."));
        assertThat(lacks(reading, About.PLAN)).isPositive();
        assertThat(lacks(reading, About.STEPS)).isGreaterThan(2);
        if (Boolean.getBoolean("crowdline.robot")) {
            System.getLogger("robot").log(System.Logger.Level.INFO, text(flight, looking, reading));
        }
    }

    private static String text(PracticeFlight flight, PracticeScore looking, PracticeScore reading) {
        StringBuilder text = new StringBuilder("Level " + flight.level().number() + ", seed " + flight.seed());
        text.append("\nLooking at the sky:");
        looking.lines().forEach(l -> text.append("\n  ").append(l.words()));
        text.append("\nReading the list:");
        reading.lines().forEach(l -> text.append("\n  ").append(l.words()));
        return text.toString();
    }
}
