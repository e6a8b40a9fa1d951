package crowdline.console.keys;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** Reads the keys of commands, compares them with what was pressed, and says them in words. */
final class Keys {
    private static final int MODIFIERS = InputEvent.CTRL_DOWN_MASK
            | InputEvent.ALT_DOWN_MASK
            | InputEvent.META_DOWN_MASK
            | InputEvent.ALT_GRAPH_DOWN_MASK;

    private Keys() {}

    static boolean matches(String key, KeyEvent event) {
        if (isTyped(key)) {
            return event.getKeyChar() == key.charAt(1) && (event.getModifiersEx() & MODIFIERS) == 0;
        }
        int modifiers = event.getModifiersEx() & (MODIFIERS | InputEvent.SHIFT_DOWN_MASK);
        KeyStroke wanted = stroke(key);
        int wantedModifiers = wanted.getModifiers() & (MODIFIERS | InputEvent.SHIFT_DOWN_MASK);
        return wanted.getKeyCode() == event.getKeyCode() && wantedModifiers == modifiers;
    }

    /** The same whatever else is held down: a hand that still rests on Ctrl must not matter. */
    static boolean isKeyOf(String key, KeyEvent event) {
        return !isTyped(key) && stroke(key).getKeyCode() == event.getKeyCode();
    }

    /** True if the key would put a letter into a text field. */
    static boolean writes(KeyEvent event) {
        int code = event.getKeyCode();
        boolean command = (event.getModifiersEx() & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) != 0;
        boolean function = code >= KeyEvent.VK_F1 && code <= KeyEvent.VK_F12;
        return !command && !function && !isAltWithASign(event);
    }

    /** Alt and a letter, a digit, a comma or a full stop; with the arrows it belongs to whoever writes. */
    private static boolean isAltWithASign(KeyEvent event) {
        int code = event.getKeyCode();
        boolean alt = (event.getModifiersEx() & (InputEvent.ALT_DOWN_MASK | InputEvent.ALT_GRAPH_DOWN_MASK))
                == InputEvent.ALT_DOWN_MASK;
        return alt
                && ((code >= KeyEvent.VK_A && code <= KeyEvent.VK_Z)
                        || (code >= KeyEvent.VK_0 && code <= KeyEvent.VK_9)
                        || code == KeyEvent.VK_PERIOD
                        || code == KeyEvent.VK_COMMA);
    }

    /** True if the key would find a row of a list by its name: a letter or a digit alone, or with Shift. */
    static boolean finds(KeyEvent event) {
        int code = event.getKeyCode();
        boolean isPlain = (event.getModifiersEx()
                        & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK | InputEvent.ALT_DOWN_MASK))
                == 0;
        return isPlain
                && ((code >= KeyEvent.VK_A && code <= KeyEvent.VK_Z)
                        || (code >= KeyEvent.VK_0 && code <= KeyEvent.VK_9));
    }

    static String inWords(String key) {
        if (isTyped(key)) {
            return key.substring(1, 2);
        }
        StringBuilder words = new StringBuilder();
        for (String part : key.split(" ", -1)) {
            if (!words.isEmpty()) {
                words.append('+');
            }
            words.append(
                    switch (part) {
                        case "ctrl" -> "Ctrl";
                        case "shift" -> "Shift";
                        case "SPACE" -> "Space";
                        case "PAGE_DOWN" -> "Page Down";
                        case "PAGE_UP" -> "Page Up";
                        case "LEFT" -> "←";
                        case "RIGHT" -> "→";
                        case "UP" -> "↑";
                        case "DOWN" -> "↓";
                        case "BACK_SPACE" -> "Backspace";
                        case "ENTER" -> "Enter";
                        case "ESCAPE" -> "Esc";
                        case "alt" -> "Alt";
                        case "TAB" -> "Tab";
                        case "PERIOD" -> ".";
                        case "COMMA" -> ",";
                        case "INSERT" -> "Insert";
                        case "DELETE" -> "Delete";
                        case "HOME" -> "Home";
                        case "END" -> "End";
                        case "PLUS", "EQUALS", "ADD" -> "+";
                        case "MINUS", "SUBTRACT" -> "−";
                        default -> part.startsWith("NUMPAD") ? "Pad " + part.substring(6) : part;
                    });
        }
        return words.toString();
    }

    private static boolean isTyped(String key) {
        return key.length() == 3 && key.charAt(0) == '\'';
    }

    private static KeyStroke stroke(String key) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key);
        if (stroke == null) {
            throw new IllegalArgumentException("the key " + key + " cannot be read");
        }
        return stroke;
    }
}
