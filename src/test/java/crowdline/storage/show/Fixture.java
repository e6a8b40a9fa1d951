package crowdline.storage.show;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;

/** A sound show file in which nothing is found, and what becomes of it when one thing in it is changed. */
final class Fixture {
    static final String FULL = text("full.json");

    private Fixture() {}

    static String text(String name) {
        try (InputStream in = Objects.requireNonNull(Fixture.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String changed(String from, String to) {
        int at = FULL.indexOf(from);
        if (at < 0) {
            throw new IllegalArgumentException("the fixture has no " + from);
        }
        return FULL.substring(0, at) + to + FULL.substring(at + from.length());
    }

    static ShowReading read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    static ShowReading read(byte[] bytes) {
        return new ShowFile().read(Path.of("day.json"), bytes);
    }
}
