"""The office: its name, logo and texts, how it numbers reports and names files. Kept outside the jobs."""

from acquisition.office.patterns import certificate_number, check_pattern, file_name
from acquisition.office.records import Letterhead, Office, letterhead
from acquisition.office.store import keep_logo, load_office, office_path, save_office

__all__ = [
    "Letterhead",
    "Office",
    "certificate_number",
    "check_pattern",
    "file_name",
    "keep_logo",
    "letterhead",
    "load_office",
    "office_path",
    "save_office",
]
