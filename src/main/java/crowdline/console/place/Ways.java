package crowdline.console.place;

import javax.swing.Action;

/**
 * The ways to a show where none is open.
 *
 * @param fresh begins a new one
 * @param open opens a file
 * @param demo opens the demo show
 */
public record Ways(Action fresh, Action open, Action demo) {}
