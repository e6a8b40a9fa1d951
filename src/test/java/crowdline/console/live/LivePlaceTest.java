package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.keys.Command;
import crowdline.console.place.Ways;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.window.NamedAction;
import crowdline.show.Announcement;
import java.util.List;
import javax.swing.Action;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class LivePlaceTest {
    private final Action nothing = new NamedAction("nothing", () -> {});
    private final SampleOnAir show = new SampleOnAir();

    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    private LivePlace place() {
        LivePlace place = new LivePlace(
                new Appearance(Themes.DAY, new Zoom(100)), new Ways(nothing, nothing, nothing), () -> {}, () -> {});
        place.run(show);
        place.refresh();
        return place;
    }

    /** An empty page would hide the act; why there is none is told beside it. */
    @Test
    void announcementsOpenOnlyWhereThereAreAny() {
        LivePlace place = place();
        place.announce();
        assertThat(place.announcements().isOpen()).isFalse();
        assertThat(show.given).containsExactly(Command.ANNOUNCE);

        show.announcing.announcements =
                List.of(new Announcement("stop", "Weather stop", List.of("Flying has stopped."), null));
        place.announce();
        assertThat(place.announcements().isOpen()).isTrue();
        assertThat(show.given).hasSize(1);
    }
}
