"""Air sealing as people do it: the leaks of a house, marks, what each seal brought, what is left."""
