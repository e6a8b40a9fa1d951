package crowdline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.show.Show;
import crowdline.storage.show.KindsFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Running orders as organisers keep them, written by hands that had not seen what reads them. When they were first read, 44 of
 * the 116 acts of the first twelve were taken rightly; then 38 of the 80 of the others.
 */
class OrganisersOrdersTest {
    private static final Show EMPTY = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);

    static Stream<Path> orders() {
        return IntStream.rangeClosed(1, 24)
                .mapToObj(number -> "orders/order-" + (number < 10 ? "0" : "") + number)
                .map(name -> Stream.of(".csv", ".tsv")
                        .map(end -> OrganisersOrdersTest.class.getResource(name + end))
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElseThrow())
                .map(OrganisersOrdersTest::path);
    }

    private static Path path(URL url) {
        try {
            return Path.of(url.toURI());
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("orders")
    void actsAreTakenAndNothingElse(Path order) throws Exception {
        RunningOrder.Reading reading = RunningOrder.read(order, Files.readString(order), EMPTY, KindsFile.shipped());

        assertThat(reading.rows().stream().filter(ActRow::taken).map(OrganisersOrdersTest::told))
                .containsExactlyElementsOf(expected(order));
    }

    private static List<String> expected(Path order) {
        try {
            return Files.readAllLines(Path.of(order.toString().replaceFirst("[.][a-z]+$", ".expected")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String told(ActRow act) {
        boolean assumed = act.said().stream().anyMatch(sentence -> sentence.contains("min are assumed"));
        boolean isOpen = act.said().stream()
                .anyMatch(sentence -> sentence.contains("is no time of day") || sentence.startsWith("No start"));
        return (isOpen ? "-" : act.start().toString()) + " | " + (assumed ? "-" : RunningOrder.number(act.minutes()))
                + " | " + act.title() + " | " + (act.performer().isEmpty() ? "-" : act.performer());
    }
}
