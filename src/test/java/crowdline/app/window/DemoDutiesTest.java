package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.shell.Folders;
import crowdline.flight.Workers;
import crowdline.loaded.ActPlans;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Plan;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.check.LocatedFinding;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Interpreted;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** That what must be said has its place. */
class DemoDutiesTest {
    private static LoadedShow loaded(String file) throws ShowFileException {
        return Objects.requireNonNull(new ShowLoader(
                        CatalogueFile::shipped,
                        () -> Paces.DEFAULT,
                        Folders.here().passes(),
                        Workers.ALONE)
                .load(Path.of(file), LoadedShow.FLIGHTS)
                .loaded());
    }

    private static List<String> flownIds(Act act, Variant variant, RemarkKind kind) {
        return Stream.concat(
                        act.remarks().stream(),
                        variant.order().stream()
                                .flatMap(id -> act.figure(id).stream())
                                .map(Figure::remarks)
                                .flatMap(List::stream))
                .filter(remark -> remark.kind() == kind)
                .map(Remark::id)
                .toList();
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"fenmarsh-air-day", "wrackenholt-evening"})
    void everyDutyAndEveryCallHasItsPlaceInEveryVariant(String name) throws ShowFileException {
        LoadedShow loaded = loaded("demo-shows/" + name + ".json");
        for (Act act : loaded.show().acts()) {
            for (Variant variant : act.variants()) {
                Plan plan =
                        ActPlans.of(loaded, List.of(act), any -> variant).get(0).plan();
                List<String> wanted = Stream.concat(
                                flownIds(act, variant, RemarkKind.DUTY).stream(),
                                flownIds(act, variant, RemarkKind.CALL).stream())
                        .toList();
                assertThat(wanted)
                        .as("%s, %s", act.id(), variant.name())
                        .isNotEmpty()
                        .allSatisfy(id -> assertThat(plan.find(id)).as(id).isPresent());
            }
        }
    }

    @Test
    void theDutyOfTheShowIsSaidInTheFirstAct() throws ShowFileException {
        LoadedShow loaded = loaded("src/test/resources/crowdline/shows/wrackenholt-evening.json");
        List<ActPlans.Planned> plans =
                ActPlans.of(loaded, loaded.show().acts(), act -> act.variants().get(0));
        assertThat(plans.get(0).plan().find("show-rope")).isPresent();
        assertThat(plans.get(1).plan().find("show-rope")).isEmpty();
    }

    /** Whoever opens the demo finds everything a day can have, and nothing to find fault with. */
    @Test
    void theDemoDayHasDutiesPiecesAnnouncementsAndThreeVoicesAndNothingIsFoundInIt() throws ShowFileException {
        ShowLoader.Result result = new ShowLoader(
                        CatalogueFile::shipped,
                        () -> Paces.DEFAULT,
                        Folders.here().passes(),
                        Workers.ALONE)
                .load(Path.of("demo-shows/fenmarsh-air-day.json"), 1);
        ShowLookup words = Objects.requireNonNull(result.loaded()).words();
        Show day = words.show();
        assertThat(result.findings())
                .as("nobody was timed on a machine of its own")
                .extracting(LocatedFinding::code)
                .containsExactly("speaker-not-timed", "speaker-not-timed");
        assertThat(day.gaps().remarks().flatMap(r -> words.other(r).stream()).distinct())
                .containsExactly("Tobit Larkspur");
        assertThat(day.remarks())
                .filteredOn(remark -> remark.kind() == RemarkKind.DUTY)
                .extracting(remark -> remark.dutyTimes().times())
                .contains(3);
        assertThat(day.gaps().pieces()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(day.announcements())
                .filteredOn(announcement -> announcement.agreedWith() != null)
                .hasSizeGreaterThanOrEqualTo(2);
        assertThat(day.everyRemark().flatMap(r -> words.other(r).stream()).distinct())
                .containsExactly("Tobit Larkspur");
        assertThat(day.everyRemark()
                        .flatMap(r -> words.interpreted(r, false).stream())
                        .map(Interpreted::speaker)
                        .distinct())
                .containsExactly("Solenne Vauquier");
    }

    @Test
    void nothingIsFoundInTheOtherDemo() throws ShowFileException {
        assertThat(new ShowLoader(
                                CatalogueFile::shipped,
                                () -> Paces.DEFAULT,
                                Folders.here().passes(),
                                Workers.ALONE)
                        .load(Path.of("demo-shows/wrackenholt-evening.json"), 1)
                        .findings())
                .extracting(LocatedFinding::code)
                .containsExactly("speaker-not-timed", "speaker-not-timed");
    }
}
