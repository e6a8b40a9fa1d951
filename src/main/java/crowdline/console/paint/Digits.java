package crowdline.console.paint;

/** Which digits do something, as it is said beside what they do. */
public final class Digits {
    private Digits() {}

    /**
     * "1 opens", "1 or 2 open", "1 to 6 open".
     *
     * @param count how many, from 1
     * @param verb what they do, such as "open"
     */
    public static String upTo(int count, String verb) {
        return count == 1 ? "1 " + verb + "s" : (count == 2 ? "1 or 2 " : "1 to " + count + " ") + verb;
    }

    /** The same with every digit the widest of our type, so that nothing moves as they change, and none needs more room. */
    public static String still(String words) {
        return words.replaceAll("[0-9]", "4");
    }
}
