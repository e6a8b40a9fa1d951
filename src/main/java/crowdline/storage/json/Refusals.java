package crowdline.storage.json;

import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Collects what records refuse, so that one refusal does not hide the next. The form of the file was checked before;
 * what is refused here is what a schema cannot say, such as an end before its beginning.
 */
public final class Refusals {
    private final List<Finding> findings = new ArrayList<>();

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    void add(String message, String path) {
        findings.add(new Finding(Severity.ERROR, "refused", message, path));
    }

    /** What {@code maker} makes, or nothing if it refused, which is then noted under {@code path}. */
    public <T> Optional<T> attempt(String path, Supplier<T> maker) {
        try {
            return Optional.of(maker.get());
        } catch (Noted e) {
            return Optional.empty();
        } catch (IllegalArgumentException | DateTimeException e) {
            add(TreePath.spoken(path) + ": " + e.getMessage(), path);
            return Optional.empty();
        }
    }

    /** A refusal that was noted already, on its way up to whatever can do without the part. */
    public static final class Noted extends RuntimeException {
        private static final long serialVersionUID = 1;

        public Noted() {
            super("noted", null, false, false);
        }
    }
}
