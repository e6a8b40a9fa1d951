package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.glance.FileKeys;
import java.awt.Component;
import java.awt.Container;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;

class FileKeysTest extends ActsFixture {
    private static Set<String> keys() throws Exception {
        try (InputStream in =
                Objects.requireNonNull(FileKeysTest.class.getResourceAsStream("/crowdline/show-schema.json"))) {
            Matcher found = Pattern.compile("\"([a-z]+[A-Z]\\w*)\": \\{")
                    .matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            Set<String> keys = new TreeSet<>();
            while (found.find()) {
                keys.add(found.group(1));
            }
            return keys;
        }
    }

    @Test
    void noKeyOfTheFileIsLeftInASentence() throws Exception {
        assertThat(keys())
                .hasSizeGreaterThan(40)
                .allSatisfy(
                        key -> assertThat(FileKeys.inWords("the " + key + " is 3; it must be above the " + key + ", 4"))
                                .doesNotContain(key)
                                .endsWith("”, 4"));
    }

    @Test
    void namesInQuotesAndOrdinaryWordsStay() {
        String sentence = "the act \"McLoop heightFt\" at 14:00 is “agreedWith”; see day.json and crowdline check";
        assertThat(FileKeys.inWords(sentence)).isEqualTo(sentence);
        assertThat(FileKeys.inWords("write who and when into agreedWith"))
                .isEqualTo("write who and when into “Agreed with whom, and when”");
        assertThat(FileKeys.inWords("the kt is 400 at 500 ft")).isEqualTo("the “Begins at, kt” is 400 at 500 ft");
        assertThat(FileKeys.inWords("the neverExceedKt is 20")).isEqualTo("the “never exceed, kt” is 20");
    }

    /** Whoever looks for a label finds it on one of the pages. */
    @Test
    void twoKeysOfOneFieldAreOneLabel() {
        assertThat(FileKeys.inWords("the venue's latDeg, lonDeg and elevationFt are not given"))
                .isEqualTo("the venue's “Latitude, longitude” and “Elevation, ft” are not given");
        assertThat(FileKeys.inWords("latDeg and lonDeg are not given"))
                .isEqualTo("“Latitude, longitude” are not given");
    }

    @Test
    void labelsStandOnThePagesAsTheyAreNamed() {
        chooseFigure("loop");
        Set<String> labels = new TreeSet<>();
        collect(panel, labels);
        assertThat(labels).containsAll(FileKeys.labels());
    }

    private static void collect(Component part, Set<String> labels) {
        if (part instanceof JLabel label && label.getText() != null) {
            labels.add(label.getText());
        }
        if (part instanceof Container all) {
            for (Component each : all.getComponents()) {
                collect(each, labels);
            }
        }
    }
}
