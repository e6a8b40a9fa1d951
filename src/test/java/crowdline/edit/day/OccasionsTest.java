package crowdline.edit.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.arrange.ShowArranging;
import crowdline.edit.Change;
import crowdline.edit.EditedShow;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.show.Announcement;
import crowdline.show.Show;
import crowdline.storage.show.IncidentTemplate;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class OccasionsTest {
    private static final Show EMPTY = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);
    private static final List<Announcement> TEMPLATE =
            IncidentTemplate.shipped().announcements();

    private Show show = EMPTY;

    private void make(Edit edit, String undo) throws CannotBe {
        Change change = edit.of(show);
        EditedShow edited = EditedShow.opened(show).changed(change);
        assertThat(edited.undoName()).contains(undo);
        assertThat(edited.undone().now()).isEqualTo(show);
        show = change.show();
    }

    private Announcement lost() {
        return show.announcement("lost-child").orElseThrow();
    }

    @Test
    void theTemplateIsAgreedWithNobodyAndHasNoNumbersThatCouldBeTakenForTold() throws CannotBe {
        make(Occasions.template(TEMPLATE), "Begin the announcements");
        assertThat(show.announcements())
                .extracting(Announcement::occasion)
                .containsExactly("Weather stop", "Lost child", "Evacuation", "Resuming", "Closing words");
        assertThat(show.announcements()).allSatisfy(a -> {
            assertThat(a.isAgreed()).isFalse();
            assertThat(a.words()).noneMatch(w -> w.matches(".*\\d.*"));
        });
        assertThat(lost().blanks()).containsExactly("where the child is", "age and sex of the child");
    }

    @Test
    void whatIsWrittenStaysWhereTheTemplateIsTakenAgain() throws CannotBe {
        make(Occasions.template(TEMPLATE), "Begin the announcements");
        make(Occasions.words("lost-child", "Ours."), "Words of the announcement “Lost child”");
        make(Occasions.remove("closing"), "Remove the announcement “Closing words”");
        Show again = Occasions.template(TEMPLATE).of(show).show();
        assertThat(again.announcement("lost-child").orElseThrow().words()).containsExactly("Ours.");
        assertThat(again.announcements()).hasSize(5);
    }

    @Test
    void wordsThatHaveChangedAreAgreedWithNobodyAnyMore() throws CannotBe {
        make(Occasions.template(TEMPLATE), "Begin the announcements");
        make(Occasions.agreed("lost-child", " Ada, 2 May "), "Agree the announcement “Lost child”");
        assertThat(lost().agreedWith()).isEqualTo("Ada, 2 May");
        make(Occasions.rename("lost-child", "A child is lost"), "Rename the announcement “Lost child”");
        assertThat(lost().isAgreed()).isTrue();
        make(Occasions.words("lost-child", "One.\n\n \nTwo [where]."), "Words of the announcement “A child is lost”");
        assertThat(lost().words()).containsExactly("One.", "Two [where].");
        assertThat(lost().isAgreed()).isFalse();
    }

    @Test
    void occasionsAreAddedUnderIdsOfTheirOwn() throws CannotBe {
        make(Occasions.add("Fog"), "Add an announcement");
        make(Occasions.add("Fog"), "Add an announcement");
        assertThat(show.announcements()).extracting(Announcement::id).doesNotHaveDuplicates();
        assertThat(show.announcements().get(0).blanks()).containsExactly("what to say");
    }

    @Test
    void whatCannotBeIsRefusedInASentence() throws CannotBe {
        make(Occasions.template(TEMPLATE), "Begin the announcements");
        assertThatThrownBy(() -> Occasions.words("lost-child", " \n\n ").of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("has no words");
        assertThatThrownBy(() -> Occasions.rename("lost-child", " ").of(show)).isInstanceOf(CannotBe.class);
        assertThatThrownBy(
                        () -> Occasions.words("lost-child", "x".repeat(5_001)).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("5,001 letters");
        assertThatThrownBy(() -> Occasions.agreed("gone", "Ada").of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("no longer in the show");
    }
}
