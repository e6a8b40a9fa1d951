package crowdline.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.bounds.Written;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.TermsFile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What of the glossary is mentioned in a text. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GlossaryMentionsTest {
    private final Glossary glossary = Glossary.of(CatalogueFile.shipped(), TermsFile.shipped(), List.of());

    private List<String> in(String text) {
        return glossary.mentionedIn(text).stream().map(Explained::name).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        a loop and then another loop     | loop
        two loops, then a slow roll      | loop, slow roll
        a slow roll, then two loops      | slow roll, loop
        an inside-out Cuban eight        | Cuban eight
        loopy, and he looped             | ``
        """)
    void wholeWordsInTheirOrderTheLongestNameOfThem(String text, String names) {
        assertThat(String.join(", ", in(text))).isEqualTo(names);
    }

    /** One name after another, the longest first, over the whole text: slow, and plainly what is meant. */
    private List<String> oneNameAfterAnother(String text) {
        String plain = Written.key(text);
        boolean[] taken = new boolean[plain.length()];
        Map<Integer, String> at = new TreeMap<>();
        List<String> longestFirst = glossary.names().stream()
                .filter(name -> name.length() >= 3)
                .sorted(Comparator.comparing(name -> -name.length()))
                .toList();
        for (String name : longestFirst) {
            for (int from = plain.indexOf(name); from >= 0; from = plain.indexOf(name, from + 1)) {
                int end = from + name.length();
                int to = end < plain.length() && plain.charAt(end) == 's' ? end + 1 : end;
                boolean whole = (from == 0 || !isOfWord(plain.codePointBefore(from)))
                        && (to == plain.length() || !isOfWord(plain.codePointAt(to)));
                if (whole && !taken[from] && !taken[to - 1]) {
                    Arrays.fill(taken, from, to, true);
                    at.put(from, glossary.find(name).orElseThrow().name());
                }
            }
        }
        return at.values().stream().distinct().toList();
    }

    private static boolean isOfWord(int letter) {
        return Character.isLetter(letter) || (letter >= '0' && letter <= '9');
    }

    @Test
    void isWhatTryingOneNameAfterAnotherFinds() {
        Random random = new Random(11);
        List<String> names = glossary.names();
        List<String> between = List.of(" ", "s ", ", ", "-", "", "x ", " a ", "½ ", "s");
        for (int i = 0; i < 600; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(6); n >= 0; n--) {
                text.append(names.get(random.nextInt(names.size())))
                        .append(between.get(random.nextInt(between.size())));
            }
            assertThat(in(text.toString())).as(text.toString()).isEqualTo(oneNameAfterAnother(text.toString()));
        }
    }

    @Test
    void nothingMentionsItself() {
        List<String> own = new ArrayList<>();
        for (Explained item : glossary.items()) {
            glossary.mentionedIn(item).stream().filter(item::equals).forEach(same -> own.add(same.name()));
        }
        assertThat(own).isEmpty();
    }
}
