package crowdline.console.help;

import crowdline.console.keys.Command;
import crowdline.console.place.Place;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Texts that come with the program and name keys: by their commands, so that none can name a key that has moved. */
public final class KeyedText {
    private static final Pattern KEY = Pattern.compile("\\{([A-Z_0-9]+)}");
    private static final Pattern HEAD = Pattern.compile("(.*?)(?: \\[(.*)])?");

    private KeyedText() {}

    /**
     * A part of such a text.
     *
     * @param head the line it begins with
     * @param about what stands in brackets there, or empty
     * @param paragraphs the rest, with keys in words
     */
    public record Part(String head, String about, List<String> paragraphs) {
        public Part {
            paragraphs = List.copyOf(paragraphs);
        }
    }

    /** Parts of a text of the program's own. */
    public static List<Part> shipped(String resource) {
        try (InputStream in = Objects.requireNonNull(KeyedText.class.getResourceAsStream(resource), resource)) {
            return parts(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws IllegalArgumentException if a command that is named does not exist */
    static List<Part> parts(String text) {
        String told = text.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
        return Stream.of(told.split("(?m)^== ", -1))
                .filter(part -> !part.isBlank())
                .map(KeyedText::part)
                .toList();
    }

    private static Part part(String text) {
        int end = text.indexOf('\n') < 0 ? text.length() : text.indexOf('\n');
        Matcher head = HEAD.matcher(text.substring(0, end));
        if (!head.matches()) {
            throw new IllegalArgumentException("no head: " + text);
        }
        List<String> paragraphs = Stream.of(text.substring(end).split("\n\\s*\n", -1))
                .map(p -> withKeys(p.replaceAll("\\s+", " ").strip()))
                .filter(p -> !p.isEmpty())
                .toList();
        return new Part(head.group(1), Objects.requireNonNullElse(head.group(2), ""), paragraphs);
    }

    /**
     * The place of a name, such as "Walk through".
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Place place(String name) {
        return Stream.of(Place.values())
                .filter(each -> each.command().label().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no place " + name));
    }

    private static String withKeys(String paragraph) {
        return KEY.matcher(paragraph)
                .replaceAll(key ->
                        Matcher.quoteReplacement(Command.valueOf(key.group(1)).key()));
    }
}
