package crowdline.storage.json;

import java.util.Locale;
import tools.jackson.databind.JsonNode;

/** Values as messages show them: short, on one line, text in quotes. */
public final class Quoted {
    private static final int LONGEST = 40;

    private Quoted() {}

    public static String text(String text) {
        return text(text, LONGEST);
    }

    public static String text(String text, int longest) {
        String shortened = text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
        StringBuilder shown = new StringBuilder("\"");
        shortened.chars().forEach(c -> {
            if (Character.isISOControl(c)) {
                shown.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                shown.append((char) c);
            }
        });
        return shown.append('"').toString();
    }

    public static String value(JsonNode value) {
        if (value.isString()) {
            return text(value.asString());
        }
        if (value.isObject()) {
            return value.isEmpty() ? "an empty object" : "an object";
        }
        if (value.isArray()) {
            return value.isEmpty() ? "an empty list" : "a list";
        }
        String written = value.toString();
        return written.length() <= LONGEST ? written : written.substring(0, LONGEST - 1) + "…";
    }
}
