package crowdline.console.theme;

import java.awt.Color;

/**
 * The colours of a theme, each named by what it is for.
 *
 * @param ground behind everything
 * @param stage behind the words to say now, the calmest surface
 * @param sunk the empty part of a bar
 * @param rule thin lines between things
 * @param text words to be read
 * @param soft words that only label others
 * @param past words already said
 * @param accent what is chosen, and the time there is
 * @param onAccent words on the accent
 * @param good nothing to do
 * @param caution worth a look
 * @param alarm act now
 * @param path the act's path in the side view
 * @param pathNow the current figure's part of it
 */
public record Palette(
        Color ground,
        Color stage,
        Color sunk,
        Color rule,
        Color text,
        Color soft,
        Color past,
        Color accent,
        Color onAccent,
        Color good,
        Color caution,
        Color alarm,
        Color path,
        Color pathNow) {}
