package crowdline.telemetry;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where the additions to B records lie, as an I record says it: {@code I023636LAD3737LOD} puts one more digit of latitude
 * at byte 36 and one of longitude at byte 37; the B is byte 1.
 */
record IgcExtensions(Map<String, Span> spans) {
    static final IgcExtensions NONE = new IgcExtensions(Map.of());

    private static final Pattern RECORD = Pattern.compile("I\\d\\d(?:\\d{4}[A-Z0-9]{3})*\\s*");
    private static final int FIRST_BYTE = 36;

    /** From byte to byte, both in it. */
    record Span(int from, int to) {}

    IgcExtensions {
        spans = Map.copyOf(spans);
    }

    /** Null where the record makes no sense. */
    static @Nullable IgcExtensions read(String line) {
        if (!RECORD.matcher(line).matches()) {
            return null;
        }
        Map<String, Span> spans = new HashMap<>();
        String list = line.stripTrailing();
        int count = Integer.parseInt(list.substring(1, 3));
        for (int i = 0; i < count; i++) {
            int at = 3 + i * 7;
            if (at + 7 > list.length()) {
                return null;
            }
            Span span = new Span(
                    Integer.parseInt(list.substring(at, at + 2)), Integer.parseInt(list.substring(at + 2, at + 4)));
            if (span.from() < FIRST_BYTE || span.to() < span.from()) {
                return null;
            }
            spans.put(list.substring(at + 4, at + 7), span);
        }
        return new IgcExtensions(spans);
    }

    /** The digits of an addition in a B record; empty where it has none. */
    String digits(String line, String code) {
        Span span = spans.get(code);
        if (span == null || span.to() > line.length()) {
            return "";
        }
        String digits = line.substring(span.from() - 1, span.to());
        return digits.chars().allMatch(c -> c >= '0' && c <= '9') ? digits : "";
    }
}
