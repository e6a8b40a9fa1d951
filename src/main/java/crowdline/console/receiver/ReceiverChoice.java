package crowdline.console.receiver;

/**
 * Somewhere the aircraft's position can come from.
 *
 * @param name to be shown
 * @param where what the program knows it by: a port's path
 */
public record ReceiverChoice(String name, String where) {}
