package crowdline.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.show.ShowFile;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A show with one part changed has that part changed, and no other. */
class ShowCopyTest {
    private final Show show = read();

    private static Show read() {
        try {
            return Objects.requireNonNull(new ShowFile()
                    .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                    .show());
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private List<String> changed(Show other) throws ReflectiveOperationException {
        List<String> found = new ArrayList<>();
        for (RecordComponent part : Show.class.getRecordComponents()) {
            if (!Objects.equals(
                    part.getAccessor().invoke(show), part.getAccessor().invoke(other))) {
                found.add(part.getName());
            }
        }
        return found;
    }

    @Test
    void onlyWhatIsToldIsChanged() throws ReflectiveOperationException {
        assertThat(changed(show.withAir(DayAir.STANDARD))).containsExactly("air");
        assertThat(changed(show.withPerformers(List.of()))).containsExactly("performers");
        assertThat(changed(show.withAircraft(List.of()))).containsExactly("airframes");
        assertThat(changed(show.withSayAs(Map.of("a", "b")))).containsExactly("sayAs");
        assertThat(changed(
                        show.withAnnouncements(List.of(new Announcement("rain", "Rain", List.of("It rains."), null)))))
                .containsExactly("announcements");
        assertThat(changed(show.withGaps(new Gaps(20, List.of())))).containsExactly("gaps");
        assertThat(changed(show.called("Another", show.date().plusDays(1)))).containsExactly("title", "date");
        assertThat(changed(show.withActs(List.of(), show.remarks()))).containsExactly("acts");
        assertThat(changed(show.withAct(show.acts().get(0)))).isEmpty();
        assertThat(changed(show.withGlossary(show.figures(), show.terms()))).isEmpty();
        assertThat(changed(show.withVenue(
                        new Venue("Elsewhere", 52.0, 0.0, 0.0, 90.0, 200.0, ZoneId.of("UTC"), Venue.Limits.NONE))))
                .containsExactly("venue");
    }
}
