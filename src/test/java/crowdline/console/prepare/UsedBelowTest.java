package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.list.ListView;
import crowdline.list.ListReader;
import crowdline.list.line.Corrected;
import org.junit.jupiter.api.Test;

/** What stands around the figures of a letter: what filled a field below the list, and what nobody has used. */
class UsedBelowTest {
    private static ListView read(String letter) {
        return ListView.of(Corrected.of(new ListReader(SampleTools.CATALOGUE).read(letter)), false, true);
    }

    @Test
    void whatFilledAFieldIsNotSaidToBeLeftOut() {
        ListView view =
                read("From: Ada <ada@example.org>\nSubject: Sunday\n\nHi Bob,\n\nour slot is 15:10\n\nloop\nslow roll\n"
                        + "\nCheers, Ada Quillan");
        assertThat(view.wrong()).isEmpty();
        assertThat(view.rows())
                .filteredOn(row -> row.text().equals("our slot is 15:10"))
                .singleElement()
                .satisfies(row -> assertThat(row.mark().word()).isEqualTo("used below"));
    }

    @Test
    void aConditionIsSaidAlthoughItNamesTheSlot() {
        assertThat(read("our slot is 15:10, or later if the wind is strong\nloop\nslow roll")
                        .wrong())
                .startsWith("Not taken as a figure to fly: “our slot");
    }
}
