package crowdline.list.word;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The rows of the files that lie beside these classes. */
public final class Rows {
    private Rows() {}

    /** Those that are neither empty nor begin with #. */
    public static List<String> of(String file) {
        try (InputStream in = Objects.requireNonNull(Rows.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(row -> !row.isBlank() && !row.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }
}
