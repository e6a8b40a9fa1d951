package crowdline.sheet.ink;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * The shapes Arabic letters take beside each other, as the characters Unicode keeps for them. They are found by the names of
 * these characters, so that no table stands here.
 */
final class ArabicForms {
    private enum Form {
        ISOLATED,
        FINAL,
        INITIAL,
        MEDIAL
    }

    private static final int FIRST = 0xFB50;
    private static final int LAST = 0xFEFC;
    private static final int TATWEEL = 0x0640;
    private static final int LAM = 0x0644;
    /** What a lam before it always becomes one letter with. */
    private static final String ALEFS = "\u0622\u0623\u0625\u0627";

    private static final Map<Form, Map<String, Integer>> FORMS = forms();

    private ArabicForms() {}

    private static Map<Form, Map<String, Integer>> forms() {
        Map<Form, Map<String, Integer>> forms = new HashMap<>();
        for (Form form : Form.values()) {
            forms.put(form, new HashMap<>());
        }
        for (int c = FIRST; c <= LAST; c++) {
            String name = Character.getName(c);
            for (Form form : Form.values()) {
                if (name != null && name.endsWith(" " + form.name() + " FORM")) {
                    String letters = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
                    forms.getOrDefault(form, Map.of()).putIfAbsent(letters, c);
                }
            }
        }
        return Map.copyOf(forms);
    }

    /** A text with its Arabic letters in the shapes they take, in the order they are read. */
    static String shaped(String text) {
        int[] letters = text.codePoints().toArray();
        StringBuilder shaped = new StringBuilder();
        for (int i = 0; i < letters.length; i++) {
            boolean before = i > 0 && joinsOn(before(letters, i));
            int after = after(letters, i);
            if (letters[i] == LAM && i + 1 < letters.length && ALEFS.indexOf(letters[i + 1]) >= 0) {
                String both = Character.toString(LAM) + Character.toString(letters[i + 1]);
                Integer joined = map(before ? Form.FINAL : Form.ISOLATED).get(both);
                if (joined != null) {
                    shaped.appendCodePoint(joined);
                    i++;
                    continue;
                }
            }
            boolean on = joinsOn(letters[i]) && takes(after);
            Form form = before && takes(letters[i]) ? on ? Form.MEDIAL : Form.FINAL : on ? Form.INITIAL : Form.ISOLATED;
            shaped.appendCodePoint(map(form).getOrDefault(Character.toString(letters[i]), letters[i]));
        }
        return shaped.toString();
    }

    private static Map<String, Integer> map(Form form) {
        return FORMS.getOrDefault(form, Map.of());
    }

    /** Whether a letter joins the one after it. */
    private static boolean joinsOn(int letter) {
        return letter == TATWEEL || map(Form.INITIAL).containsKey(Character.toString(letter));
    }

    /** Whether a letter lets itself be joined by the one before it. */
    private static boolean takes(int letter) {
        return letter == TATWEEL || map(Form.FINAL).containsKey(Character.toString(letter));
    }

    private static int before(int[] letters, int at) {
        int i = at - 1;
        while (i > 0 && isMark(letters[i])) {
            i--;
        }
        return letters[i];
    }

    private static int after(int[] letters, int at) {
        int i = at + 1;
        while (i < letters.length && isMark(letters[i])) {
            i++;
        }
        return i < letters.length ? letters[i] : ' ';
    }

    private static boolean isMark(int c) {
        return Character.getType(c) == Character.NON_SPACING_MARK;
    }
}
