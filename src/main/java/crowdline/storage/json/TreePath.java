package crowdline.storage.json;

import java.util.regex.Pattern;

/** Paths as findings give them: {@code acts[0].figures[3].figure}, and {@code sayAs["St. Ives"]} for odd keys. */
public final class TreePath {
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z_$][A-Za-z0-9_$]*");
    private static final int LONGEST_KEY = 80;

    private TreePath() {}

    public static String key(String parent, String key) {
        if (PLAIN.matcher(key).matches()) {
            return parent.isEmpty() ? key : parent + "." + key;
        }
        return parent + "[" + Quoted.text(key, LONGEST_KEY) + "]";
    }

    public static String item(String parent, int index) {
        return parent + "[" + index + "]";
    }

    /** How a message calls the place: the path, or {@code the show file} for the whole. */
    public static String spoken(String path) {
        return path.isEmpty() ? "the show file" : path;
    }
}
