package crowdline.storage.settings;

import crowdline.measure.Measures;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the program remembers from one start to the next.
 *
 * @param recentFiles show files, the last opened first
 * @param theme name of the screen theme
 * @param zoom size of the screen text against the ordinary, 0.5 to 4
 * @param speaker whose pace is used, or null for the default's
 * @param buttons what pedals and remotes do
 * @param measures what speeds and heights are read in
 * @param skyApart whether the sky of a practice flight is in a window of its own
 * @param listens whether Live listens to the microphone
 * @param second how the second window looks
 */
public record Settings(
        List<Path> recentFiles,
        String theme,
        double zoom,
        @Nullable String speaker,
        LearnedButtons buttons,
        Measures measures,
        boolean skyApart,
        boolean listens,
        SecondLook second) {
    /** As many as fit a menu; common practice, no source. */
    private static final int MOST_RECENT = 10;

    public static final Settings DEFAULT = new Settings(
            List.of(), "day", 1, null, LearnedButtons.NONE, Measures.USUAL, false, false, SecondLook.DEFAULT);

    public Settings {
        recentFiles = List.copyOf(recentFiles);
        if (theme.isBlank()) {
            throw new IllegalArgumentException("theme is empty; it must be the name of one");
        }
        if (!(zoom >= 0.5 && zoom <= 4)) {
            throw new IllegalArgumentException("zoom is " + zoom + "; it must be from 0.5 to 4");
        }
    }

    /** With a file opened just now. */
    public Settings withRecent(Path file) {
        List<Path> files = new ArrayList<>(recentFiles);
        files.remove(file);
        files.add(0, file);
        return new Settings(
                files.subList(0, Math.min(MOST_RECENT, files.size())),
                theme,
                zoom,
                speaker,
                buttons,
                measures,
                skyApart,
                listens,
                second);
    }

    public Settings withTheme(String newTheme) {
        return new Settings(recentFiles, newTheme, zoom, speaker, buttons, measures, skyApart, listens, second);
    }

    public Settings withZoom(double newZoom) {
        return new Settings(recentFiles, theme, newZoom, speaker, buttons, measures, skyApart, listens, second);
    }

    public Settings withSpeaker(@Nullable String newSpeaker) {
        return new Settings(recentFiles, theme, zoom, newSpeaker, buttons, measures, skyApart, listens, second);
    }

    public Settings withMeasures(Measures newMeasures) {
        return new Settings(recentFiles, theme, zoom, speaker, buttons, newMeasures, skyApart, listens, second);
    }

    public Settings withButtons(LearnedButtons newButtons) {
        return new Settings(recentFiles, theme, zoom, speaker, newButtons, measures, skyApart, listens, second);
    }

    public Settings withSkyApart(boolean apart) {
        return new Settings(recentFiles, theme, zoom, speaker, buttons, measures, apart, listens, second);
    }

    public Settings withListens(boolean listen) {
        return new Settings(recentFiles, theme, zoom, speaker, buttons, measures, skyApart, listen, second);
    }

    public Settings withSecond(SecondLook look) {
        return new Settings(recentFiles, theme, zoom, speaker, buttons, measures, skyApart, listens, look);
    }
}
