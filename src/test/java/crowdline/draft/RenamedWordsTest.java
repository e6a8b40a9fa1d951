package crowdline.draft;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.edit.act.Acts;
import crowdline.edit.act.CannotBe;
import crowdline.edit.day.Aircrafts;
import crowdline.edit.day.People;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** First drafts say what somebody and something is called now, and not what they were called when they were drafted. */
class RenamedWordsTest {
    private static final Drafted DRAFTED = Drafted.of(
            Drafted.empty(), "strong aerobatic monoplane", "Ada", "take-off, loop, stall turn, low pass, landing", 1);

    private static Act act(Show show) {
        return show.acts().get(0);
    }

    private static Show named(String title) {
        return DRAFTED.show().withAct(DRAFTED.act().withTitle(title));
    }

    private static Show renamed(Show show) throws CannotBe {
        Show called =
                People.rename(act(show).performer(), "Wilma Brook").of(show).show();
        return Aircrafts.rename(act(show).airframe(), "Wasp 300").of(called).show();
    }

    private static List<String> texts(Show show) {
        return act(show).figures().stream()
                .flatMap(f -> f.remarks().stream())
                .map(Remark::text)
                .toList();
    }

    @Test
    void draftsTakeTheNewNamesAndNothingElseOfThemChanges() throws CannotBe {
        Show show = named("Ada, strong aerobatic monoplane");
        Show called = renamed(show);

        assertThat(texts(show).get(0)).isEqualTo("Ready for take-off: Ada, in an aerobatic monoplane.");
        assertThat(texts(called).get(0)).isEqualTo("Ready for take-off: Wilma Brook, in the Wasp 300.");
        assertThat(texts(called)).noneMatch(t -> t.matches(".*\\bAda\\b.*") || t.contains("an aerobatic monoplane"));
        List<String> back = texts(called).stream()
                .map(t -> t.replace("Wilma Brook", "Ada").replace("in the Wasp 300", "in an aerobatic monoplane"))
                .toList();
        assertThat(back.get(0)).isEqualTo(texts(show).get(0));
        assertThat(act(called).title()).isEqualTo("Wilma Brook, Wasp 300");
        assertThat(act(called).figures().stream().flatMap(f -> f.remarks().stream()))
                .allMatch(Remark::draft);
    }

    @Test
    void whatAPersonWroteOrNamedStays() throws CannotBe {
        Show show = named("The red one");
        Figure first = act(show).figures().get(0);
        List<Remark> own = new ArrayList<>(first.remarks());
        own.set(0, own.get(0).withDraft(false));
        own.add(Remark.of("mine", RemarkKind.FACT, "Ada built it."));
        List<Figure> figures = new ArrayList<>(act(show).figures());
        figures.set(0, first.withRemarks(own));
        Show called = renamed(show.withAct(act(show).withFigures(figures, List.of())));

        assertThat(act(called).title()).isEqualTo("The red one");
        assertThat(texts(called)).contains("Ready for take-off: Ada, in an aerobatic monoplane.", "Ada built it.");
    }

    @Test
    void anActGivenToSomebodyElseWelcomesThem() throws CannotBe {
        Show called = Acts.performer(DRAFTED.act().id(), "Wilma Brook")
                .of(DRAFTED.show())
                .show();

        assertThat(texts(called).get(0)).isEqualTo("Ready for take-off: Wilma Brook, in an aerobatic monoplane.");
    }

    @Test
    void aTeamThatIsAnnouncedByANameIsWelcomedByIt() throws CannotBe {
        Drafted drafted =
                Drafted.of(Drafted.empty(), "formation of 5", "Ada Quillan", "low pass, bomb burst, low pass", 1);
        Show called = Acts.rename(drafted.act().id(), "the Tern Team")
                .of(drafted.show())
                .show();

        assertThat(texts(called).get(0)).startsWith("Please welcome the Tern Team, with Ada Quillan.");
        Show again = Acts.rename(drafted.act().id(), "the Wren Five").of(called).show();
        assertThat(texts(again).get(0)).startsWith("Please welcome the Wren Five, with Ada Quillan.");
    }

    @Test
    void aNameWithinAnotherWordIsNotThatName() throws CannotBe {
        Show show = named("The red one");
        Figure first = act(show).figures().get(0);
        Remark spoken = Remark.of("drafted", RemarkKind.FACT, "Adaptable as ever, Ada waves.")
                .withDraft(true);
        List<Figure> figures = new ArrayList<>(act(show).figures());
        figures.set(0, first.withRemarks(List.of(spoken)));

        assertThat(texts(renamed(show.withAct(act(show).withFigures(figures, List.of()))))
                        .get(0))
                .isEqualTo("Adaptable as ever, Wilma Brook waves.");
    }
}
