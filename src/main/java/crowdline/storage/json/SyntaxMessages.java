package crowdline.storage.json;

import crowdline.storage.file.Where;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/** Says in plain words why a text is not JSON, from the character it broke at and what stands before it. */
final class SyntaxMessages {
    private SyntaxMessages() {}

    static String of(String text, JacksonException e, Where where) {
        String said = String.valueOf(e.getOriginalMessage());
        boolean ended = e instanceof UnexpectedEndOfInputException || said.startsWith("Unexpected end-of-input");
        if (ended || where.line() > lines(text)) {
            return "the file ends before every bracket and quote is closed; it may have been cut short, so get it again"
                    + " or go back to the .previous file beside it";
        }
        if (e instanceof StreamConstraintsException) {
            return "one name, number or text in the file is far too long for a show file";
        }
        int at = offset(text, where);
        char c = at < text.length() ? text.charAt(at) : ' ';
        char before = lastBefore(text, at);
        String plain = plain(text, c, before);
        return plain != null ? plain : "this is not JSON: " + tidy(said);
    }

    private static @Nullable String plain(String text, char c, char before) {
        if (text.stripLeading().startsWith("<")) {
            return "this is a web page or XML, not a show file; a show file begins with {";
        }
        if (!text.isBlank() && "{[".indexOf(text.stripLeading().charAt(0)) < 0) {
            return "this is not a show file, which begins with {; choose the file that was saved as a show";
        }
        if ((c == '}' || c == ']') && before == ',') {
            return "there is a comma before the closing " + c + "; take the comma out";
        }
        if ((c == '"' || c == '{' || c == '[') && (before == '"' || before == '}' || before == ']')) {
            return "a comma or colon is missing before this " + c;
        }
        if (c == '"' && Character.isLetterOrDigit(before)) {
            return "a comma is missing before this " + c;
        }
        if (c == '/' || c == '#') {
            return "comments are not allowed in JSON; take it out";
        }
        if (c == '\'' || c == '“' || c == '”') {
            return "names and text need straight double quotes, not " + c;
        }
        if (Character.isLetter(c) && (before == '{' || before == ',')) {
            return "a name needs double quotes round it";
        }
        if (c < ' ') {
            return "a text runs over the end of its line; close it with a quote, or write \\n for a new line";
        }
        return null;
    }

    private static String tidy(String message) {
        String first = message.lines().findFirst().orElse(message);
        return first.replaceAll(" \\(code \\d+[^)]*\\)", "")
                .replaceAll(": maybe a \\(non-standard\\).*", "")
                .replaceAll("[:,]? ?\\(?enable `.*", "");
    }

    private static long lines(String text) {
        return text.chars().filter(c -> c == '\n').count() + 1;
    }

    private static int offset(String text, Where where) {
        int at = 0;
        for (int line = 1; line < where.line() && at >= 0; line++) {
            at = text.indexOf('\n', at) + 1;
        }
        return Math.min(text.length(), at + where.column() - 1);
    }

    private static char lastBefore(String text, int at) {
        for (int i = Math.min(at, text.length()) - 1; i >= 0; i--) {
            if (!Character.isWhitespace(text.charAt(i))) {
                return text.charAt(i);
            }
        }
        return ' ';
    }
}
