package crowdline.console.incident;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PageReadingTest {
    private final PageReading reading = new PageReading();

    private void room(int letters, String... paragraphs) {
        reading.on(List.of(paragraphs), letters, words -> words.length() <= letters);
    }

    private String now() {
        return reading.now().map(p -> p.text() + " [" + p.where() + "]").orElse("");
    }

    private String next() {
        return reading.next().map(PageReading.Part::text).orElse("");
    }

    @Test
    void wordsAreReadFromTheFirstToTheLastAndBack() {
        room(21, "First.", "Second, of two parts. It goes on.", "Third.");
        List<String> read = new ArrayList<>(List.of(now()));
        for (int i = 0; i < 5; i++) {
            assertThat(next())
                    .isEqualTo(
                            i < 3
                                    ? List.of("Second, of two parts.", "It goes on.", "Third.")
                                            .get(i)
                                    : "");
            reading.on();
            read.add(now());
        }
        assertThat(read)
                .containsExactly(
                        "First. [1 of 3]",
                        "Second, of two parts. [2 of 3, part 1 of 2]",
                        "It goes on. [2 of 3, part 2 of 2]",
                        "Third. [3 of 3]",
                        "Third. [3 of 3]",
                        "Third. [3 of 3]");
        reading.back();
        reading.back();
        assertThat(now()).isEqualTo("Second, of two parts. [2 of 3, part 1 of 2]");
        reading.back();
        reading.back();
        assertThat(now()).isEqualTo("First. [1 of 3]");
    }

    @Test
    void anotherSizeOfTheWindowKeepsThePlace() {
        String[] paragraphs = {"First.", "One two three four five six seven eight nine ten."};
        room(20, paragraphs);
        reading.on();
        reading.on();
        reading.on();
        String before = reading.now().orElseThrow().text();
        room(12, paragraphs);
        assertThat(reading.now().orElseThrow().text()).contains(before.substring(0, before.indexOf(' ')));
        room(1000, paragraphs);
        assertThat(now()).isEqualTo(paragraphs[1] + " [2 of 2]");
    }

    @Test
    void otherWordsBeginAtTheirFirst() {
        room(20, "First.", "Second.");
        reading.on();
        room(20, "Other.", "Words.");
        assertThat(now()).isEqualTo("Other. [1 of 2]");
    }

    @Test
    void thePlaceOfTheOnlyWordsIsNotSaid() {
        room(20, "All.");
        assertThat(now()).isEqualTo("All. []");
        reading.on(List.of(), 20, words -> true);
        assertThat(now()).isEmpty();
        reading.on();
        reading.back();
    }
}
