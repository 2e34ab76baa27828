"""The languages a report can be written in: English in the program itself, each other one in a catalogue of its own."""

from acquisition.languages.language import ENGLISH, Language
from acquisition.languages.reading import TAGS, language_of, languages

__all__ = ["ENGLISH", "TAGS", "Language", "language_of", "languages"]
