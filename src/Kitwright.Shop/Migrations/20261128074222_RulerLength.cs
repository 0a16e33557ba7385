using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Kitwright.Shop.Migrations
{
    /// <inheritdoc />
    public partial class RulerLength : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<long>(
                name: "RulerLengthTicks",
                table: "Terms",
                type: "INTEGER",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "RulerLengthTicks",
                table: "Terms");
        }
    }
}
