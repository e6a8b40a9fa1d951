package crowdline.console.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.console.live.SmallShow;
import crowdline.edit.Change;
import crowdline.show.DayAir;
import crowdline.show.Show;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class EditingTest {
    private static final DayAir WARM = new DayAir(1013, 31, 240, 12, null);

    private final Editing editing = new Editing();
    private final List<Show> edited = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();

    private void open() {
        editing.onEdit(edited::add);
        editing.onChange(() -> titles.add(editing.title().orElse("none")));
        editing.open("day.json", SmallShow.show());
    }

    @Test
    void everyChangeAndStepIsToldOnceAndOpeningIsNoChange() {
        open();
        Show warm = SmallShow.show().withAir(WARM);
        editing.change(Change.of("Change the day's air", warm));
        editing.change(Change.of("Change the day's air", warm));
        assertThat(editing.undo()).contains("Change the day's air");
        assertThat(editing.undo()).isEmpty();
        assertThat(editing.redo()).contains("Change the day's air");
        assertThat(editing.redo()).isEmpty();
        assertThat(edited).containsExactly(warm, SmallShow.show(), warm);
        assertThat(titles).containsExactly("day.json", "day.json, not saved", "day.json", "day.json, not saved");
    }

    @Test
    void listenersSeeTheShowAsItIsWhenTheyAreTold() {
        editing.onEdit(show -> assertThat(editing.now()).isEqualTo(show));
        open();
        editing.change(Change.of("Change the day's air", SmallShow.show().withAir(WARM)));
        editing.undo();
        assertThat(edited).hasSize(2);
    }

    @Test
    void aSaveMakesItSavedUnlessMoreWasDoneMeanwhile() {
        open();
        Show warm = SmallShow.show().withAir(WARM);
        editing.change(Change.of("Change the day's air", warm));
        assertThat(editing.isAirUnsaved()).isTrue();
        editing.saved(SmallShow.show(), "copy.json");
        assertThat(editing.title()).contains("copy.json, not saved");
        editing.saved(warm, "copy.json");
        assertThat(editing.isUnsaved()).isFalse();
        assertThat(editing.isAirUnsaved()).isFalse();
        assertThat(editing.saved()).isEqualTo(warm);
    }

    @Test
    void withoutAShowThereIsNothingToEditAndNothingUnsaved() {
        open();
        editing.close();
        assertThat(editing.isOpen()).isFalse();
        assertThat(editing.isUnsaved()).isFalse();
        assertThat(editing.undo()).isEmpty();
        editing.saved(SmallShow.show(), "late.json");
        assertThat(editing.title()).isEmpty();
        assertThatThrownBy(editing::now).hasMessageContaining("no show is open");
    }
}
