package crowdline.console.debrief;

import java.nio.file.Path;

/**
 * A day that can be set beside this one.
 *
 * @param journal its file
 * @param name when it was, and of which show
 */
public record DayChoice(Path journal, String name) {}
