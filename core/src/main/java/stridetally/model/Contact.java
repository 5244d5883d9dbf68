package stridetally.model;

/** Whom a family or a team reaches. Never shared. Blank = not written. */
public record Contact(String name, String role, String place, String phone, String email, String hours) {
    /** Nothing written. */
    public static final Contact NONE = new Contact("", "", "", "", "", "");
}
