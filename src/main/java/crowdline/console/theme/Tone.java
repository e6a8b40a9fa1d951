package crowdline.console.theme;

/** How much a state asks of the commentator. Never shown by colour alone. */
public enum Tone {
    CALM,
    GOOD,
    CAUTION,
    ALARM
}
