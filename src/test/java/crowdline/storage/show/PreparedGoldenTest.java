package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Announcement;
import crowdline.show.Show;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.storage.Golden;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.ObjectMapper;

/** A show with announcements and a figure with a shape of its own, as it was first written. */
class PreparedGoldenTest {
    private static Show show(String golden) throws Exception {
        ShowReading reading = Fixture.read(Golden.bytes(golden));
        assertThat(reading.findings()).noneMatch(found -> found.code().equals("unknown-key"));
        return Objects.requireNonNull(reading.show());
    }

    @Test
    void itsAnnouncementsAreReadWithWhoAgreedThem() throws Exception {
        assertThat(show("show-1-prepared.json").announcements())
                .containsExactly(
                        new Announcement(
                                "lost-child",
                                "Lost child",
                                List.of(
                                        "A child is waiting at [where the child is].",
                                        "If you miss [age and sex of the child], please go there."),
                                "the organiser, 3 May"),
                        new Announcement("closing", "Closing words", List.of("Good night."), null));
    }

    @Test
    void itsFigureHasAShapeOfItsOwn() throws Exception {
        Figure mine = show("show-1-prepared.json").acts().get(0).figures().get(0);
        assertThat(mine.hasOwnShape()).isTrue();
        assertThat(mine.asked()).isNotNull().extracting(a -> a.heightFt()).isEqualTo(800.0);
        assertThat(mine.elements())
                .containsExactly(
                        new Element.Line(Element.Until.SECONDS, 3, 1),
                        new Element.Arc(Element.Way.PULL, 360.0, null, Element.Size.RADIUS_M, 140, 1));
    }

    @Test
    void savedAgainItSaysTheSame() throws Exception {
        byte[] golden = Golden.bytes("show-1-prepared.json");
        Show show = show("show-1-prepared.json");
        ObjectMapper mapper = new ObjectMapper();
        byte[] written = new ShowFile().bytes(show, Fixture.read(golden).document());
        assertThat(mapper.readTree(written)).isEqualTo(mapper.readTree(golden));
        assertThat(Fixture.read(new ShowFile().bytes(show, null)).show()).isEqualTo(show);
    }

    @Test
    void aShowFromBeforeHasNoAnnouncementsAndNoneAreWritten() throws Exception {
        Show before = show("show-1.json");
        assertThat(before.announcements()).isEmpty();
        assertThat(new String(new ShowFile().bytes(before, null), java.nio.charset.StandardCharsets.UTF_8))
                .doesNotContain("announcements", "ownShape");
    }
}
