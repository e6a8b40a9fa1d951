package crowdline.arrange;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.ListReader;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies between figures is called what the crowd sees it is. */
class TransitWordsTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();

    private static List<Figure> flown(String list) {
        return flown(list, "aerobatic glider");
    }

    private static List<Figure> flown(String list, String kind) {
        return new ShowArranging(CATALOGUE)
                .add(
                        ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null),
                        new ListReader(CATALOGUE).read(list),
                        id -> KindsFile.shipped().named(kind).airframe(id, "The aircraft", Sliders.TYPICAL),
                        new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null))
                .act()
                .figures();
    }

    @Test
    void aGliderIsOnTheRopeUntilItLetsGo() {
        List<Figure> towed = flown("release, loop");

        assertThat(towed).extracting(Figure::shownName).startsWith("on the tow", "tow release");
        assertThat(towed.get(0).look()).endsWith("here it comes, still on its rope.");
        assertThat(flown("low pass, loop")).extracting(Figure::shownName).startsWith("running in", "low pass");
    }

    @Test
    void aTurnBackOverAClimbIsCalledOne() {
        List<Figure> flown = flown("slow roll from the left, stall turn from the right", "large biplane");

        assertThat(flown).extracting(Figure::shownName).contains("climbing turn");
        assertThat(flown)
                .filteredOn(figure -> figure.shownName().equals("climbing turn"))
                .extracting(Figure::look)
                .containsExactly("It pulls up as it turns away from you, speed turning into height, and comes back from"
                        + " the right.");
    }

    /** A climbing turn and an even one after it were two figures, each said to come back. */
    @Test
    void roundByAClimbingTurnAndRoundAgainIsOneComingRound() {
        List<Figure> flown = flown("loop from the left, loop from the left", "old trainer");

        assertThat(flown.get(2).elements()).hasAtLeastOneElementOfType(Element.Turn.class);
        assertThat(flown.get(2).elements()).hasAtLeastOneElementOfType(Element.Reposition.class);
        assertThat(flown.get(2).shownName()).endsWith("coming round again");
        assertThat(flown).extracting(Figure::shownName).doesNotContain("climbing turn", "turning back");
    }
}
