package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class SentencesAgainstIcuTest {

    private static final Sentences SENTENCES = new Sentences();

    private static final Pattern SHORT = Pattern.compile("\\b(Mr|Dr|St|No|Mk|vs|Flt|Lt|Maj|Gen)\\.");

    private static final List<String> PIECES = List.of(
            "the",
            "Loop",
            "rolls",
            "It",
            "é",
            "cafe\u0301",
            "don't",
            "Åse",
            "6",
            "1.5",
            "1,250",
            "3:30",
            "half-and-half",
            "MiG",
            "g",
            "a_b",
            "½",
            "№",
            "👋",
            " ",
            " ",
            " ",
            " ",
            "  ",
            "\n",
            "\r\n",
            "\t",
            "\u00a0",
            ".",
            ".",
            ".",
            "!",
            "?",
            "...",
            "…",
            "?!",
            ",",
            ":",
            ";",
            "-",
            " - ",
            " – ",
            "—",
            "\"",
            "\"",
            "'",
            "“",
            "”",
            "’",
            "(",
            ")",
            "[",
            "]",
            "/",
            "%",
            "°",
            "£",
            "&",
            "#",
            "·",
            "\u00ad",
            "\u2028",
            "*");

    @Test
    void anyTextOfPiecesIsPartedAsIcuPartsIt() {
        for (int seed = 0; seed < 10_000; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            String text = Stream.generate(() -> PIECES.get(random.nextInt(PIECES.size())))
                    .limit(random.nextInt(1, 14))
                    .collect(Collectors.joining());
            assertParted(text, "<" + text + ">, seed " + seed);
        }
    }

    /** The remarks of the demo shows, the catalogue, what voices spoke, and what the tests of speech are made of. */
    @Tag("slow")
    @Test
    void everyTextInTheRepositoryIsPartedAsIcuPartsIt() throws IOException {
        Set<String> texts = new LinkedHashSet<>();
        for (String folder : List.of(
                "demo-shows",
                "src/main/resources",
                "src/test/resources/crowdline/speech",
                "src/test/java/crowdline/speech")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.filter(Files::isRegularFile)
                        .filter(file -> !file.endsWith("SentencesTest.java") && !file.endsWith("BreathsTest.java"))
                        .toList()) {
                    texts.addAll(textsIn(file));
                }
            }
        }

        assertThat(texts).hasSizeGreaterThan(3000);
        for (String text : texts) {
            assertParted(text, text);
        }
    }

    private static void assertParted(String text, String as) {
        // Abbreviations have a test of their own, and three dots are three dots in whatever way they are typed.
        String plain = SHORT.matcher(text).replaceAll("$1").replace("…", "...");
        assertThat(sentencesIn(plain)).as("sentences of %s", as).isEqualTo(IcuSentences.sentencesIn(plain));
        assertThat(wordsIn(text)).as("words of %s", as).isEqualTo(IcuSentences.wordsIn(text));
    }

    /** What stands between quotation marks, or between the bars of a table, and has a space in it. */
    private static List<String> textsIn(Path file) throws IOException {
        return Pattern.compile("[\"|\n]")
                .splitAsStream(Files.readString(file))
                .map(String::strip)
                .filter(text -> text.contains(" "))
                .toList();
    }

    private static List<String> sentencesIn(String text) {
        return SENTENCES.in(text).stream().map(s -> s.in(text)).toList();
    }

    private static List<String> wordsIn(String text) {
        return SENTENCES.wordsIn(text).stream().map(s -> s.in(text)).toList();
    }
}
