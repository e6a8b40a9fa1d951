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
 * @param accent the time there is, and what stands out
 * @param chosen behind what is chosen
 * @param onChosen words on what is chosen
 * @param row behind the chosen row of a list
 * @param rowAside the same while the keys go elsewhere
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
        Color chosen,
        Color onChosen,
        Color row,
        Color rowAside,
        Color good,
        Color caution,
        Color alarm,
        Color path,
        Color pathNow) {}
