package crowdline.app.window.practice;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.window.PracticeLearner;
import crowdline.console.keys.Command;
import crowdline.console.practice.PracticeChoice;
import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.practice.Level;
import crowdline.practice.PracticeScore;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Line;
import crowdline.running.AircraftSource;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.show.CatalogueFile;
import crowdline.telemetry.serial.SerialPorts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Practice by the keys of Live, from the flight to the score: once looking at the sky, once reading the list. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PracticeShowTest {
    private static final long SEED = 7;
    private static final double NEEDS_S = 1;
    /** On another day and at another hour than the show's. */
    private static final Instant TODAY = Instant.parse("2026-11-03T21:07:00Z");

    private final AtomicLong nanos = new AtomicLong(5_000_000_000L);
    private final LoadedShow show;

    @TempDir
    Path folder;

    PracticeShowTest() throws ShowFileException {
        show = Objects.requireNonNull(new ShowLoader(
                        CatalogueFile::shipped, () -> Paces.DEFAULT, Path.of("target", "no-passes"), Workers.ALONE)
                .load(Path.of("demo-shows", "wrackenholt-evening.json"), 1)
                .loaded());
    }

    private PracticeShow begin(Level level) throws Exception {
        JournalMachine machine = new JournalMachine(nanos::get, () -> TODAY, "this boot");
        return new PracticeShow(
                show,
                new PracticeChoice("quickthorn-solo", level, SEED),
                machine,
                new AircraftSource(nanos::get, new SerialPorts(folder)),
                PracticeFolder.make(folder));
    }

    private static long lacks(PracticeScore score, About about) {
        return score.about(about).stream().filter(l -> !l.well()).count();
    }

    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Level.class)
    void whoLooksUpIsToldLittleAndWhoReadsTheListIsToldWhatBroke(Level level) throws Exception {
        PracticeShow first = begin(level);
        new PracticeLearner(first, nanos).looks(NEEDS_S);
        PracticeScore looking = first.end();
        PracticeShow second = begin(level);
        new PracticeLearner(second, nanos).readsTheList();
        PracticeScore reading = second.end();
        if (Boolean.getBoolean("crowdline.robot")) {
            System.getLogger("practice").log(System.Logger.Level.INFO, text(level, looking, reading));
        }

        assertThat(lacks(looking, About.PLAN)).isZero();
        assertThat(looking.about(About.STEPS))
                .containsExactly(
                        new Line(About.STEPS, true, "You were in step with every figure, within 3 s of its start."));
        assertThat(lacks(looking, About.DUTIES)).isZero();
        assertThat(lacks(looking, About.TALK)).isZero();
        assertThat(lacks(reading, About.PLAN)).isPositive();
        assertThat(lacks(reading, About.STEPS)).isGreaterThan(2);
        assertThat(lacks(reading, About.CALLS)).isGreaterThan(lacks(looking, About.CALLS));
        // After the incident of level four nobody is asked for thanks.
        assertThat(lacks(reading, About.DUTIES)).isEqualTo(level == Level.FOUR ? 0 : 1);
    }

    private static String text(Level level, PracticeScore looking, PracticeScore reading) {
        StringBuilder text = new StringBuilder("Level " + level.number());
        text.append("\nLooking at the sky:");
        looking.lines()
                .forEach(l -> text.append("\n  ").append(l.well() ? "+ " : "- ").append(l.words()));
        text.append("\nReading the list:");
        reading.lines()
                .forEach(l -> text.append("\n  ").append(l.well() ? "+ " : "- ").append(l.words()));
        return text.toString();
    }

    @Test
    void itsClockIsTheSlotsHoweverLateInTheYearItIs() throws Exception {
        PracticeShow practice = begin(Level.ONE);
        new PracticeLearner(practice, nanos).waitFor(10);
        LocalTime slot = show.show().act("quickthorn-solo").orElseThrow().slotStart();

        assertThat(practice.view().strip().hour())
                .isEqualTo(slot.minusSeconds(20).toString());
        assertThat(Objects.requireNonNull(practice.view().strip().practice()).word())
                .isEqualTo("PRACTICE");
        assertThat(practice.view().now().name()).isEqualTo("On in 20 s");
        practice.drop();
    }

    @Test
    void aReceiverIsNotAskedFor() throws Exception {
        PracticeShow practice = begin(Level.ONE);
        PracticeLearner learner = new PracticeLearner(practice, nanos);
        learner.waitFor(1);
        learner.press(Command.BY_AIRCRAFT);

        assertThat(Objects.requireNonNull(practice.view().told()).word()).contains("your keys move it on");
        practice.drop();
    }

    @Test
    void nothingOfItIsLeft() throws Exception {
        PracticeShow ended = begin(Level.ONE);
        new PracticeLearner(ended, nanos).waitFor(ended.flight().startS() + 20);
        assertThat(files()).isNotEmpty();
        PracticeScore score = ended.end();
        assertThat(score.about(About.STEPS)).isNotEmpty();
        PracticeShow dropped = begin(Level.ONE);
        new PracticeLearner(dropped, nanos).waitFor(3);
        dropped.drop();

        assertThat(files()).isEmpty();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(p -> !p.equals(folder)).toList();
        }
    }
}
