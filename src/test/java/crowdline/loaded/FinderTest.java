package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.loaded.Found.Kind;
import crowdline.show.Show;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.TermsFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** In a show of two acts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FinderTest {
    private Show show;
    private Finder finder;

    @BeforeAll
    void lookThrough() throws Exception {
        show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                .show());
        finder = Finder.of(show, CatalogueFile.shipped(), TermsFile.shipped());
    }

    private Found first(String words) {
        List<Found> found = finder.find(words);
        assertThat(found).as(words).isNotEmpty();
        return found.get(0);
    }

    @Test
    void figuresAndWordsAreFoundForgivenTheirSpelling() {
        assertThat(first("stall tur")).extracting(Found::kind, Found::name).containsExactly(Kind.FIGURE, "stall turn");
        assertThat(first("stal trun").name()).isEqualTo("stall turn");
        assertThat(first("display line").kind()).isEqualTo(Kind.WORD);
    }

    @Test
    void twoLettersFindWhatTheDayFliesBeforeWhatItDoesNot() {
        assertThat(first("st").name()).isEqualTo("stall turn");
        assertThat(finder.find("st")).extracting(Found::name).contains("quick stop");
    }

    @Test
    void namesComeWithHowTheyAreSaidAndAreFoundAsTheySound() {
        show.performers().forEach(performer -> {
            Found found = first(performer.name());
            assertThat(found.kind()).isEqualTo(Kind.NAME);
            assertThat(found.name()).isEqualTo(performer.name());
            String sayAs = performer.sayAs();
            if (sayAs != null) {
                assertThat(found.sayIt()).isEqualTo(sayAs);
                assertThat(first(sayAs).name()).isEqualTo(performer.name());
            }
        });
    }

    @Test
    void actsAndFactsAreFound() {
        show.acts()
                .forEach(act -> assertThat(first(act.title()))
                        .extracting(Found::kind, Found::name)
                        .containsExactly(Kind.ACT, act.title()));
        show.everyRemark()
                .filter(remark -> remark.kind() == crowdline.show.figure.RemarkKind.FACT)
                .forEach(remark -> assertThat(finder.find(remark.text()))
                        .as(remark.text())
                        .anyMatch(found ->
                                found.kind() == Kind.FACT && found.texts().equals(List.of(remark.text()))));
    }

    @Test
    void nothingIsFoundByNothing() {
        assertThat(finder.find("  ")).isEmpty();
        assertThat(finder.find("xqzzkw")).isEmpty();
        assertThat(Finder.NOTHING.find("loop")).isEmpty();
    }
}
