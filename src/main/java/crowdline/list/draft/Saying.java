package crowdline.list.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One way to say a thing: one of the words is needed, the pattern takes words, and the meaning says what they mean. */
record Saying(List<String> needs, Pattern pattern, Meaning meaning) {

    /** What a match says; false if it says nothing after all, and its words stay. */
    @FunctionalInterface
    interface Meaning {
        boolean say(Draft draft, Matcher found);
    }

    /**
     * What is said by these words.
     *
     * @param needs words parted by |, of which one must be there
     * @param regex of plain words with one space between them
     */
    static Saying of(String needs, String regex, Meaning meaning) {
        Pattern pattern = Pattern.compile("(?<= )(?:" + regex + ")(?= |(?<= ))");
        return new Saying(List.of(needs.split("[|]")), pattern, meaning);
    }

    /** Looking for a word is many times faster than trying a pattern. */
    private boolean mayBeIn(StringBuilder text) {
        return needs.stream().anyMatch(need -> text.indexOf(need) >= 0);
    }

    /**
     * Says in a draft what words say, in the order of the sayings.
     *
     * @param words plain words
     * @param to how many of them to look at
     * @param taken which of them are taken; becomes true for those that are understood
     */
    static void take(List<Saying> sayings, Draft draft, List<String> words, int to, boolean[] taken) {
        StringBuilder text = new StringBuilder(" ");
        List<Integer> wordAt = new ArrayList<>();
        wordAt.add(-1);
        for (int i = 0; i < to; i++) {
            String word = words.get(i);
            String shown = taken[i] ? "·" : word;
            for (int c = 0; c <= shown.length(); c++) {
                wordAt.add(i);
            }
            text.append(shown).append(' ');
        }
        for (Saying saying : sayings) {
            if (!saying.mayBeIn(text)) {
                continue;
            }
            Matcher found = saying.pattern().matcher(text);
            int from = 0;
            while (found.find(from)) {
                from = Math.max(found.end(), found.start() + 1);
                if (saying.meaning().say(draft, found)) {
                    for (int c = found.start(); c < found.end(); c++) {
                        if (text.charAt(c) != ' ') {
                            taken[wordAt.get(c)] = true;
                            text.setCharAt(c, '·');
                        }
                    }
                }
                if (from > text.length()) {
                    break;
                }
            }
        }
    }
}
