package crowdline.show.check;

import crowdline.show.bounds.Most;

/**
 * Something found while checking a show.
 *
 * @param severity how bad
 * @param code stable short name in lower case with hyphens, such as {@code unknown-figure}
 * @param message one sentence: what, which value, what is allowed, what to do
 * @param path where in the show file, such as {@code acts[0].figures[3].figure}; empty for the whole file
 */
public record Finding(Severity severity, String code, String message, String path) {
    public Finding {
        Most.mustBeText("finding code", code);
        Most.mustBeText("finding message", message);
    }
}
