package crowdline.console.live.find;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.loaded.Found;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FindPresenterTest {
    private static Found word(String name) {
        return new Found(Found.Kind.WORD, name, "", List.of("What " + name + " is.", "At the show."));
    }

    @Test
    void theBestIsOpenAtOnceAndADigitOpensAnother() {
        List<Found> found = List.of(
                new Found(Found.Kind.NAME, "Ada Quillan", "AY-da", List.of("Learned to fly at ten.")),
                word("adagio"),
                new Found(Found.Kind.FACT, "loop, Ada", "", List.of("She had a barn.")));
        FindView first = FindPresenter.of("ad", found, 0);
        assertThat(first.rows())
                .extracting(FindView.Row::name)
                .containsExactly("Ada Quillan", "adagio", "She had a barn.");
        assertThat(first.rows()).extracting(FindView.Row::isOpen).containsExactly(true, false, false);
        assertThat(first.open()).isEqualTo(new FindView.Page("Ada Quillan", "AY-da", "Learned to fly at ten."));
        assertThat(FindPresenter.of("ad", found, 1).open())
                .isEqualTo(new FindView.Page("adagio", "", "What adagio is. At the show."));
    }

    @Test
    void moreThanCanBeShownIsSaid() {
        List<Found> many = IntStream.range(0, 20).mapToObj(i -> word("w" + i)).toList();
        FindView view = FindPresenter.of("w", many, 99);
        assertThat(view.rows()).hasSize(6);
        assertThat(Objects.requireNonNull(view.open()).name()).isEqualTo("w5");
        assertThat(view.hint()).startsWith("14 more: type on. 1 to 6 choose.");
    }

    @Test
    void nothingTypedAndNothingFoundSaySo() {
        assertThat(FindPresenter.of(" ", List.of(), 0).hint()).startsWith("Type the first letters");
        assertThat(FindPresenter.of("zz", List.of(), 0).hint()).startsWith("Nothing has that name.");
        assertThat(FindPresenter.of("zz", List.of(), 0).hint()).contains("Page Down and Page Up step the act");
    }
}
