"""The report: one page for a single direction, set as an archival PDF that carries its own data."""

from acquisition.report.content import PointRow, ReportContent, RunContent, content_of, content_of_test
from acquisition.report.pages import pdf_pages
from acquisition.report.render import report_pdf

__all__ = ["PointRow", "ReportContent", "RunContent", "content_of", "content_of_test", "pdf_pages", "report_pdf"]
