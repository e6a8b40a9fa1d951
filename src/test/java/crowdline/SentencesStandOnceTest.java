package crowdline;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.catalogue.Catalogue;
import crowdline.storage.show.CatalogueFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Holds that a sentence for the user stands in one file, where it can be found and put better once for all. */
class SentencesStandOnceTest {
    private static final Pattern TEXT = Pattern.compile("\"((?:\\\\.|[^\"\\\\\n])*)\"");
    /** Shorter pieces are parts of different sentences that happen to be alike. */
    private static final int LETTERS = 30;
    /** What a layout is told, which nobody reads on the screen. */
    private static final Pattern LAYOUT = Pattern.compile("\\b(wrap|grow|growx|hmin|wmin|insets|fill)\\b");

    @Test
    void aSentenceStandsInOneFile() throws IOException {
        Map<String, Set<String>> files = new TreeMap<>();
        for (Path file : SourceTree.javaFilesUnder(Path.of("src", "main", "java"))) {
            Matcher matcher = TEXT.matcher(Files.readString(file));
            while (matcher.find()) {
                String text = matcher.group(1);
                if (text.length() >= LETTERS
                        && text.contains(" ")
                        && !LAYOUT.matcher(text).find()) {
                    files.computeIfAbsent(text, t -> new TreeSet<>()).add(String.valueOf(file.getFileName()));
                }
            }
        }
        assertThat(files).hasSizeGreaterThan(300);
        files.values().removeIf(in -> in.size() == 1);
        // A long name of a figure is a name, not a sentence.
        Catalogue catalogue = CatalogueFile.shipped();
        files.keySet().removeIf(text -> catalogue.find(text).isPresent());
        assertThat(files).as("sentences that stand in several files").isEmpty();
    }
}
