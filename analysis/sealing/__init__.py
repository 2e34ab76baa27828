"""Air sealing while a pressure is held: what each seal brought, how sure that is, what is left to a target."""
