package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.about.AboutAct;
import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in a letter and is no figure: who signs, what flies, how long it all is, and what is to be struck out. */
class WhoAndWhatNotTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Sqn Ldr (ret.) Wilma Oakes",
                "Squadron Leader Wilma Oakes",
                "Captain Wilma Oakes (retd)",
                "Flight Lieutenant W. Oakes",
                "about 8 minutes from take-off to touchdown",
                "Roughly six and a half mins from exit to the last landing.",
            })
    void isBelowTheListAndNoFigure(String line) {
        var list = READER.read("loop\nspin\nslow roll\n" + line);

        assertThat(list.lines()).extracting(ListLine::figure).containsExactly("loop", "spin", "slow roll");
        assertThat(list.notes()).contains(line);
    }

    @ParameterizedTest
    @ValueSource(strings = {"I fly the Merrow 300.", "We bring our Burrel 90.", "You will see the Slo 2 again."})
    void whatFliesIsNoMisspeltFigure(String line) {
        assertThat(READER.read(line + "\nloop\nspin\nslow roll").lines())
                .extracting(ListLine::figure)
                .containsExactly("loop", "spin", "slow roll");
    }

    /** With a unit it is a speed, and the word a slip of the hand. */
    @Test
    void aMisspeltFigureWithASpeedStaysOne() {
        assertThat(READER.read("loop\nthen the Burrel roll\nthe Immelmann 150 kt")
                        .lines())
                .extracting(ListLine::figure)
                .containsExactly("loop", "barrel roll", "half loop with roll out on top");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"spin (delete)", "spin - delete", "spin (please remove)", "spin, please cut", "spin, delete this"
            })
    void whatIsToBeStruckOutIsNotFlown(String line) {
        var list = READER.read("loop\n" + line + "\nslow roll\nlow pass");

        assertThat(list.lines()).extracting(ListLine::figure).containsExactly("loop", "slow roll", "low pass");
        assertThat(list.notes()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"I am down for 14:35.", "We are booked for 2:35 pm"})
    void whatSomebodyIsDownForIsTheSlot(String line) {
        assertThat(AboutAct.of(READER.read(line + "\nloop\nspin\nslow roll")).begins())
                .isEqualTo(LocalTime.of(14, 35));
    }
}
